namespace ProcessorDesk.Records;

/// <summary>Whether a hold of this reason stops this act. The built-in rows can be tightened, never loosened.</summary>
public sealed class HoldRule
{
    private HoldRule()
    {
    }

    public HoldRule(HoldReason reason, HeldAct act, bool stops) => (Reason, Act, Stops, BuiltIn) = (reason, act, stops, stops);

    public HoldReason Reason { get; private set; }

    public HeldAct Act { get; private set; }

    public bool Stops { get; private set; }

    /// <summary>What the rule says out of the box.</summary>
    public bool BuiltIn { get; private set; }

    /// <summary>Makes the rule stop the act.</summary>
    public void Tighten() => Stops = true;

    /// <summary>Back to what is built in.</summary>
    public void Reset() => Stops = BuiltIn;
}
