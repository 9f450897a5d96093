namespace Hotside.Tests.Studies;

public class TwelveCircuitsTests
{
    [Fact]
    public void Dump()
    {
        foreach (var (name, text) in TwelveCircuits.All)
        {
            Console.WriteLine("== " + name);
            var study = TestCircuit.Study(text);
            foreach (var l in study.Loads)
                Console.WriteLine($"{l.Name,-12} {l.Side,-15} {{{l.Control}}} chain[{string.Join(",", l.Chain)}] by[{string.Join(",", l.SwitchedBy)}] through[{string.Join(",", l.InSeriesWith)}] string={l.StringSide} holds={l.Holds} until={l.Until} shorted[{string.Join(",", l.ShortedBy)}] rev[{string.Join(",", l.ReversedBy)}] braked={l.Braked} race={l.IsInRace} dead={l.DeadBecause} sneaks={l.Sneaks} also[{string.Join(",",l.AlsoFedBy)}]{(l.IsApproximate?" APPROX":"")}");
            foreach (var f in study.Findings) Console.WriteLine("   " + f);
        }
    }
}
