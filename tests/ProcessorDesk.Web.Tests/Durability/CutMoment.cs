namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>When the power fails: as the so-manieth form is sent since the start, or as the so-manieth answer is had.</summary>
internal sealed class CutMoment(bool whenSent, int count, Action cut)
{
    private int _passed;
    private int _hit;

    public static CutMoment Never => new(false, 0, () => { });

    public bool IsPast { get; private set; }

    /// <summary>Forms that were under way when it fell, and will never be answered.</summary>
    public int Hit => _hit;

    public void Sent() => Pass(whenSent);

    public void Answered() => Pass(!whenSent);

    public void Hits() => Interlocked.Increment(ref _hit);

    private void Pass(bool counts)
    {
        if (!counts || Interlocked.Increment(ref _passed) != count)
            return;
        IsPast = true;
        cut();
    }
}
