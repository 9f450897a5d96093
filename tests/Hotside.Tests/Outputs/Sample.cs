using System.Collections.Immutable;
using Hotside.Drawings;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Sheets;
using Hotside.Studies;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Tests.Outputs;

/// <summary>A sheet with every symbol and all furniture, every text of it replaced by one's own if wanted.</summary>
internal static class Sample
{
    public static Scene Sheet(string? text = null)
    {
        Lettering lettering = Lettering.Normal;
        var groups = ImmutableArray.CreateBuilder<SceneGroup>();
        SheetFrame frame = new(SheetSize.A3);
        groups.Add(new(Layer.Frame, frame.Shapes(lettering)) { Id = "frame", AriaHidden = true });
        for (int i = 0; i < SymbolBook.Names.Length; i++)
        {
            Symbol symbol = SymbolBook.Of(SymbolBook.Names[i], Tests.Symbols.Kinds.TerminalsOf(SymbolBook.Names[i]), new() { Inside = text });
            double x = 120 + (i % 8 * 180), y = 120 + (i / 8 * 110);
            groups.Add(new(Layer.Parts, PartLook.Apply(symbol.At(x, y), (PartStyle)(i % 5)))
            {
                Id = "part-" + (text ?? symbol.Name), Classes = ["part", text ?? "kept"], Data = [("ref", text ?? symbol.Name)], Title = text ?? symbol.Name,
            });
            groups.Add(new(Layer.Marks, new TextBlock { Reference = text ?? "K1", Name = text ?? "Horn relay", Number = new("4", ColourRole.New), Side = SwitchedSide.HotSwitched, SideText = "HOT-SWITCHED" }.Measure().At(x + 100, y)));
        }

        foreach (LineStyle state in Enum.GetValues<LineStyle>())
            groups.Add(new(Layer.Wires, ConductorLine.Of([(100, 1000 + (10 * (int)state)), (400, 1000 + (10 * (int)state))], state)) { Id = "wire" });
        groups.Add(new(Layer.Notes, TitleBlock.Of(TitleBlock.FieldNames.ToDictionary(n => n, n => text ?? n)).At(920, 1064)) { Id = "title-block" });
        return new(SheetSize.A3.Width, SheetSize.A3.Height, text ?? "All symbols", text ?? "Every symbol once.", groups.ToImmutable()) { Id = "sample" };
    }
}
