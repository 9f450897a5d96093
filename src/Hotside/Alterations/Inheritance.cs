using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>What a new part takes over from the old one in whose place it stands, where its line does not say.</summary>
internal static class Inheritance
{
    /// <summary>The new part's specification with name, assembly, place and mount of the old one; ratings and options are never inherited.</summary>
    public static PartSpec Of(Part old, PartSpec said) => said with
    {
        Name = said.Name ?? old.Name,
        Assembly = said.Assembly ?? old.Assembly,
        Place = said.Place ?? old.Place,
        Case = said.Case ?? MountOf(old, said.Kind),
    };

    /// <summary>What the case of a new part stands on; <see langword="null"/>: as its kind has it. A mount that only the old kind's default brought says nothing of the new part.</summary>
    public static CaseMount? MountOf(Part old, PartKind now) =>
        old.Kind.HasCaseTerminal && now.HasCaseTerminal && old.Spec.Case != old.Kind.DefaultMount ? old.Spec.Case : null;
}
