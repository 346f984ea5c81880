using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The parts of a process record as it is printed: the verdict with its row and source, the chart, every reading.</summary>
internal static class RecordParts
{
    public static IReadOnlyList<ProcessPart> Of(BatchView view, ShopDay shop) =>
    [
        .. view.Verdicts.Fermenting is { } fermenting ? [Part(view, shop, ReadingStage.Fermenting, fermenting.Words, Texts(fermenting.Findings), fermenting.Source)] : Array.Empty<ProcessPart>(),
        .. view.Verdicts.Cooking is { } cooking
            ? [Part(view, shop, ReadingStage.Cooking, cooking.Words, [RecordWords.Row(cooking, view.Batch.RulesInForce.Accuracy), .. Texts(cooking.Findings)], cooking.Source)]
            : Array.Empty<ProcessPart>(),
        .. view.Verdicts.Chilling is { } chilling
            ? [Part(view, shop, ReadingStage.Chilling, chilling.Words, [Held(chilling), .. Texts(chilling.Findings)], chilling.Source)]
            : Array.Empty<ProcessPart>(),
        .. view.Verdicts.Drying is { } drying
            ? [new ProcessPart("Drying: " + drying.Words, [RecordWords.Lost(drying), .. Texts(drying.Findings)], "the shop's own written process", null, [], [])]
            : Array.Empty<ProcessPart>(),
        .. view.Batch.WrittenSupport is { } support
            ? [new ProcessPart("By the shop's own written process", [support], "named by the manager at the release", null, [], [])]
            : Array.Empty<ProcessPart>(),
    ];

    private static ProcessPart Part(BatchView view, ShopDay shop, ReadingStage stage, string words, IReadOnlyList<string> facts, string source)
    {
        var lines = view.Lines.Of(BatchLineKind.Reading).Where(line => line.What == (int)stage).ToList();
        var probes = lines.Select(line => line.Probe).Distinct().OrderBy(probe => probe == 0).ThenBy(probe => probe).ToList();
        return new ProcessPart(
            $"{Wording.Of(stage)}: {words}", [.. facts.Where(fact => fact != "")], source, StageChart.Of(view, stage, shop),
            [.. probes.Select(probe => probe == 0 ? "pH" : $"Probe {probe}")],
            [.. lines.GroupBy(line => line.TakenAt).OrderBy(moment => moment.Key).Select(IReadOnlyList<string> (moment) =>
                [shop.Moment(moment.Key), .. probes.Select(probe => string.Join(", ", moment.Where(line => line.Probe == probe).Select(Printed))), string.Join(", ", moment.Select(line => line.By).Distinct())])]);
    }

    private static IReadOnlyList<string> Texts(IEnumerable<Finding> findings) => [.. findings.Select(finding => finding.Text)];

    private static string Held(CoolingCheck check) =>
        $"Held against {check.Option.Name}: {string.Join(", then ", check.Option.Steps.Select(step => step.Print()))}. "
        + string.Join(" ", check.Steps.Where(step => step.Probe is not null && step.Step.AtMost is not null)
            .Select(step => $"{step.Step.From.Print()} to {step.Step.To.Print()}: {ProcessTime.Print(step.Found)} shown at probe {step.Probe}, the slowest."));

    private static string Printed(BatchLine line)
    {
        var figure = line.Probe == 0 ? Ph.FromHundredths((int)line.Amount).Print()[3..] : Temperature.FromHundredthsFahrenheit((int)line.Amount).Print();
        return line.Stands ? figure : $"{figure} struck out by {line.StruckBy}: {line.Because}";
    }
}
