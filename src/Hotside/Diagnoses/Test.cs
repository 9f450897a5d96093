namespace Hotside.Diagnoses;

/// <summary>A reading that can be taken.</summary>
/// <param name="Setting">The number of the setting.</param>
internal abstract record Test(int Setting);

/// <summary>Volts from one node to another.</summary>
/// <param name="Setting">The number of the setting.</param>
/// <param name="Red">The node of the red lead; −1 for the return.</param>
/// <param name="Black">The node of the black lead; −1 for the return.</param>
internal sealed record VoltsTest(int Setting, int Red, int Black) : Test(Setting);

/// <summary>How something looks or sounds.</summary>
/// <param name="Setting">The number of the setting.</param>
/// <param name="Watched">Its number among what can be watched.</param>
internal sealed record LookTest(int Setting, int Watched) : Test(Setting);

/// <summary>How a test lamp from a node to the return looks.</summary>
/// <param name="Setting">The number of the setting.</param>
/// <param name="Node">The node.</param>
internal sealed record LampTest(int Setting, int Node) : Test(Setting);

/// <summary>Whether a fuse is blown.</summary>
/// <param name="Fuse">Its number among the fuses.</param>
internal sealed record FuseTest(int Fuse) : Test(0);

/// <summary>Ohms from a node to the return, the battery taken out.</summary>
/// <param name="Setting">The number of the setting.</param>
/// <param name="Node">The node.</param>
/// <param name="Pulled">The number of the fuse that is pulled; −1 for none, <see cref="AllFuses"/> for all.</param>
internal sealed record OhmsTest(int Setting, int Node, int Pulled) : Test(Setting)
{
    /// <summary>Stands for all fuses.</summary>
    public const int AllFuses = -2;
}

/// <summary>What was read.</summary>
/// <param name="Test">The reading.</param>
/// <param name="Value">Volts; ohms; the number of a look's state; 1 for a blown fuse and 0 for a whole one.</param>
/// <param name="Text">As it was entered.</param>
internal sealed record Observation(Test Test, double Value, string Text);
