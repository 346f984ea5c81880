using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What is known of an animal calls for holds, and new knowledge releases them. Its holds must have been loaded.</summary>
public sealed partial class Animal
{
    public bool IsHeldFor(HoldReason reason) => Standing(reason).Any();

    /// <summary>A test that was asked for and has no result yet.</summary>
    public bool AwaitsResult => DiseaseTest is DiseaseTest.Pending or DiseaseTest.HunterWillCall;

    /// <summary>
    /// Puts on what is missing of: no tag, a disease test without a result, disease detected, found warm after a night with
    /// nobody there.
    /// </summary>
    /// <param name="warmAbove">The warmest that passes for the species.</param>
    public void HoldAsKnown(Temperature warmAbove, DateTime at, int byId)
    {
        if (TagKey is null)
            HoldOnce(HoldReason.MissingTag, null, at, byId);
        if (AwaitsResult)
            HoldOnce(HoldReason.DiseaseTest, SampleNumber is null ? null : $"Sample {SampleNumber}", at, byId);
        if (DiseaseTest == DiseaseTest.Detected)
            HoldOnce(HoldReason.DiseaseDetected, SampleNumber is null ? null : $"Sample {SampleNumber}", at, byId);
        if (ArrivalState == ArrivalState.Unknown && SurfaceTemperature is { } surface && surface > warmAbove)
            HoldOnce(HoldReason.TooWarm, $"Found at {surface.Print()}, above {warmAbove.Print()}", at, byId);
    }

    /// <summary>
    /// After what is known was changed: a tag that is there now and a result of "not detected" release their holds by
    /// themselves; everything else is released by a hand.
    /// </summary>
    public void LookAgain(Temperature warmAbove, DateTime at, int byId)
    {
        if (TagKey is not null)
            ReleaseAll(HoldReason.MissingTag, $"The tag is there: {Tag}", at, byId);
        if (DiseaseTest == DiseaseTest.NotDetected)
            ReleaseAll(HoldReason.DiseaseTest, "Result: not detected", at, byId);
        if (DiseaseTest == DiseaseTest.Detected)
            ReleaseAll(HoldReason.DiseaseTest, "Result: detected, held for that now", at, byId);
        HoldAsKnown(warmAbove, at, byId);
    }

    private void HoldOnce(HoldReason reason, string? note, DateTime at, int byId)
    {
        if (!IsHeldFor(reason))
            PutOnHold(reason, note, at, byId);
    }

    private void ReleaseAll(HoldReason reason, string because, DateTime at, int byId)
    {
        foreach (var hold in Standing(reason).ToList())
            hold.Release(at, byId, because);
    }

    private IEnumerable<Hold> Standing(HoldReason reason) => _holds.Where(hold => hold.Reason == reason && hold.ReleasedAt is null);
}
