using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>A kept order and kept animals as the form shows them, to be changed or foretold of again.</summary>
internal static class KeptOrder
{
    public static OrderInput Of(JobPapers papers, ScaleDivision division)
    {
        var job = papers.Job;
        var lines = job.CutOrder.ToDictionary(line => line.Group);
        var order = new OrderInput
        {
            Cuts =
            [
                .. CutMenu.Groups.Select(group => lines.GetValueOrDefault(group.Code) is { } line
                    ? new CutInput { Group = group.Code, Cut = line.Cut, Detail = line.Detail ?? "", PerPack = line.PerPack?.ToString(CultureInfo.InvariantCulture) ?? "" }
                    : new CutInput { Group = group.Code }),
            ],
            Asks = [.. papers.Asks.Select(line => line.Ask).Select(ask => new AskInput { ProductId = ask.ProductId, Kind = ask.Kind, Amount = Amount(ask, division) })],
            Pooling = job.Pooling,
            Wrap = job.Wrap,
            NoPork = job.NoPork,
            PromisedFor = job.PromisedFor?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
            Notes = job.Notes ?? "",
            CutsLocked = job.CutsLocked,
            AsksLocked = job.AsksLocked,
        };
        if (lines.Count > 0)
            order.Style = "";
        if (order.Asks.Count == 0)
            order.Asks = [new(), new()];
        return order;
    }

    public static AnimalInput Of(Animal animal, WeighIn? arrival) => new()
    {
        Species = animal.Species,
        Sex = animal.Sex,
        Tag = animal.Tag ?? "",
        Licence = animal.LicenceNumber ?? "",
        Confirmation = animal.HarvestConfirmation ?? "",
        HarvestedOn = animal.HarvestedOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
        Area = animal.HarvestArea ?? "",
        State = animal.ArrivalState,
        Weight = arrival is null ? "" : arrival.KeyedDivision.Print(arrival.Net),
        Surface = animal.SurfaceTemperature?.Fahrenheit.ToString("0.##", CultureInfo.InvariantCulture) ?? "",
        Condition = animal.Condition ?? "",
        DiseaseTest = animal.DiseaseTest,
        SampleNumber = animal.SampleNumber ?? "",
        CattleAge = animal.CattleAge ?? CattleAge.Unknown,
    };

    /// <summary>What a kept job will probably give and cost, at the prices it was taken at.</summary>
    public static Outlook Outlook(RecordsContext records, ShopDay day, JobPapers papers)
    {
        var order = Of(papers, day.Settings.BenchDivision);
        order.Offered = Offer.Of(records);
        return Counter.Outlook.Of(records, day, order, Animals(papers), papers.Job.PriceListId);
    }

    public static IReadOnlyList<(AnimalInput Typed, Ratio Share)> Animals(JobPapers papers) =>
        [.. papers.Animals.Select(animal => (Of(animal.Animal, animal.Arrival), animal.Share))];

    private static string Amount(GrindOrder ask, ScaleDivision division) => ask.Kind switch
    {
        AskKind.OwnLean => division.PrintFigure(ask.Amount),
        AskKind.Finished => division.PrintFigure(ask.Amount),
        AskKind.Percent => ask.Percent.Print(),
        AskKind.Rest => "",
    };
}
