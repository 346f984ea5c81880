using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Orders: what becomes of each muscle group, and of the trim.</summary>
internal static class OrderBook
{
    public static void Write(Season season, JobInHand job, bool isLater)
    {
        var dice = season.Dice;
        var noPork = dice.In(3);
        job.Asks = Asks(season, noPork);
        var style = dice.Of(CutMenu.Styles);
        var order = new TakenOrder(
            [.. CutMenu.Groups.Select((group, i) => new CutOrderLine(i, group.Code, style.CutFor(group.Code), null, null))],
            job.Asks,
            DateOnly.FromDateTime(job.Job.TakenAt).AddDays(season.Floor.Settings.PromiseDays),
            dice.In(30) ? Pooling.Pooled : Pooling.Own,
            dice.In(80) ? PackWrap.Vacuum : PackWrap.FreezerPaper,
            noPork,
            dice.In(10) ? "Call before cutting." : null);
        if (order.WriteOn(job.Job) is { Count: > 0 } findings)
            throw new InvalidOperationException(findings[0].Text);
        job.Job.CompleteDetails();
        foreach (var line in job.Job.CutOrder)
            season.Add(line, job.Job);
        foreach (var ask in job.Job.Asks)
            season.Add(ask, job.Job);
        if (isLater)
            season.Changed(job.Job);
    }

    private static PlannedAsk[] Asks(Season season, bool noPork)
    {
        var dice = season.Dice;
        PlannedAsk Ask(string product, AskKind kind, int pounds, int percent) =>
            new(season.Floor.FormulaOf(product), kind, Weight.FromPounds(pounds), Proportion.FromPercent(percent));
        return noPork
            ? [Ask(ShopOpening.BeefFat, AskKind.Percent, 0, 50)]
            : dice.Between(1, 10) switch
            {
                <= 3 => [],
                <= 5 => [Ask(ShopOpening.Sausage, AskKind.OwnLean, dice.Between(8, 20), 0)],
                <= 7 => [Ask(ShopOpening.Sausage, AskKind.Finished, dice.Between(10, 25), 0), Ask(ShopOpening.Breakfast, AskKind.Percent, 0, 30)],
                _ => [Ask(ShopOpening.Breakfast, AskKind.Percent, 0, 50), season.Floor.PlainGround],
            };
    }
}
