namespace ProcessorDesk.Records;

/// <summary>Which acts each kind of hold stops, before the shop tightens any.</summary>
/// <remarks>
/// A pending or positive disease test stops cutting, grinding, mixing with others and leaving; the head may go to the
/// laboratory (Michigan State University Extension 2022; Minnesota Department of Agriculture). The rest is common practice, no
/// source: levels are untouched; bone out and freeze apart; full stop.
/// </remarks>
internal static class BuiltInHolds
{
    private static readonly HeldAct[] s_all =
        [HeldAct.Cut, HeldAct.BoneOut, HeldAct.Grind, HeldAct.Batch, HeldAct.Release, HeldAct.HandOver, HeldAct.SendToLaboratory];

    public static IEnumerable<HoldRule> Rules() =>
        from reason in Enum.GetValues<HoldReason>()
        from act in s_all
        select new HoldRule(reason, act, Allowed(reason).All(allowed => allowed != act));

    private static HeldAct[] Allowed(HoldReason reason) => reason switch
    {
        HoldReason.DiseaseTest => [HeldAct.SendToLaboratory],
        HoldReason.DiseaseDetected => [HeldAct.SendToLaboratory],
        HoldReason.MissingTag => [HeldAct.SendToLaboratory],
        HoldReason.Dispute => [HeldAct.Cut, HeldAct.BoneOut, HeldAct.SendToLaboratory],
        HoldReason.TooWarm => [HeldAct.SendToLaboratory],
        HoldReason.CoolerFailed => [HeldAct.SendToLaboratory],
        HoldReason.WrongMeatIn => [HeldAct.Cut, HeldAct.BoneOut, HeldAct.SendToLaboratory],
        HoldReason.RecordIncomplete => [HeldAct.Cut, HeldAct.BoneOut, HeldAct.Grind, HeldAct.Batch, HeldAct.SendToLaboratory],
        HoldReason.Other => [HeldAct.Cut, HeldAct.BoneOut, HeldAct.SendToLaboratory],
    };
}
