namespace Hotside.Tool;

/// <summary>
/// Scripts that let a shell complete the commands, options and choices: each asks the program itself, which answers <c>[suggest:position]</c> with a word a line.
/// Where it has nothing to suggest the shell completes file names.
/// </summary>
internal static class CompletionScript
{
    public const string Bash = """
        # hotside completions for bash. Add to ~/.bashrc:  eval "$(hotside completions bash)"
        _hotside() {
            local word="${COMP_WORDS[COMP_CWORD]}" IFS=$'\n'
            COMPREPLY=( $(compgen -W "$(hotside "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)" -- "$word") )
        }
        complete -o default -F _hotside hotside

        """;

    public const string Zsh = """
        # hotside completions for zsh. Add to ~/.zshrc, after compinit:  eval "$(hotside completions zsh)"
        _hotside() {
            local -a found
            found=("${(@f)$(hotside "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)}")
            found=(${(M)found:#${PREFIX}*})
            if (( ${#found} )); then compadd -- $found; else _files; fi
        }
        compdef _hotside hotside

        """;

    public const string Fish = """
        # hotside completions for fish. Save as ~/.config/fish/completions/hotside.fish
        complete -c hotside -a '(hotside "[suggest:"(string length -- (commandline -cp))"]" (commandline -cp) 2>/dev/null)'

        """;

    public const string PowerShell = """
        # hotside completions for PowerShell. Add to $PROFILE:  hotside completions pwsh | Out-String | Invoke-Expression
        Register-ArgumentCompleter -Native -CommandName hotside -ScriptBlock {
            param($word, $line, $position)
            hotside "[suggest:$position]" "$line" 2>$null | Where-Object { $_ -like "$word*" } |
                ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
        }

        """;
}
