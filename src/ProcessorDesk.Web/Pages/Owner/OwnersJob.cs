using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>
/// What an owner may know of a job: facts and figures of the owner's own, no name of staff or of others, no free text of the shop's, no
/// telephone and no address of the owner's.
/// </summary>
public sealed record OwnersJob(
    JobFacts Facts,
    IReadOnlyList<OwnersCut> Cuts,
    IReadOnlyList<OwnersAnimal> Animals,
    IReadOnlyList<OwnersProduct> Products,
    IReadOnlyList<OwnersBox> Boxes,
    OwnersMoney Money,
    IReadOnlyList<HoldReason> Holds,
    JobWeights Weights,
    YieldAccount Yield,
    YieldForecast? Forecast)
{
    public bool IsHeld => Holds.Count > 0;

    public IEnumerable<OwnersProduct> Wanted => Products.Where(product => product.Green.IsPositive || product.Asked is not null);

    public Weight BoxedAway(ScaleDivision division) => division.Sum(Boxes.Select(box => box.Net));

    /// <summary>Four queries more, for a link that is right.</summary>
    public static OwnersJob Read(RecordsContext records, JobFacts facts, ScaleDivision division)
    {
        // Flat joins, each by its index: a collection within a collection would be made for all jobs first.
        var shares =
            (from job in records.Jobs.AsNoTracking()
             where job.Id == facts.Id
             from share in records.Shares.Where(share => share.JobId == job.Id).DefaultIfEmpty()
             orderby share.AnimalId
             select new
             {
                 AnimalId = (int?)share.AnimalId,
                 Portion = (Portion?)share.Portion,
                 Species = (Species?)share.Animal.Species,
                 share.Animal.Tag,
                 ArrivalState = (ArrivalState?)share.Animal.ArrivalState,
                 ArrivedAt = (DateTime?)share.Animal.ArrivedAt,
                 share.Animal.HungAt,
                 DiseaseTest = (DiseaseTest?)share.Animal.DiseaseTest,
                 Cuts = job.CutOrder.OrderBy(line => line.Position).Select(line => new { line.Position, line.Group, line.Cut, line.Detail, line.PerPack }).ToList(),
                 Holds = records.Holds.Where(hold => hold.ReleasedAt == null && hold.JobId == job.Id).Select(hold => hold.Reason).ToList(),
                 AnimalHolds = records.Holds.Where(hold => hold.ReleasedAt == null && hold.AnimalId == share.AnimalId).Select(hold => hold.Reason).ToList(),
                 Owners = records.Shares.Where(one => one.AnimalId == share.AnimalId).OrderBy(one => one.Id)
                     .Select(one => new ShareRow(one.JobId, one.Numerator, one.Denominator)).ToList(),
                 Parts = records.Parts.Where(part => part.AnimalId == share.AnimalId).OrderBy(part => part.Id).Select(part => new { part.Kind, part.GivenAt }).ToList(),
             })
            .AsSingleQuery()
            .ToList();
        var animals = shares.Where(one => one.AnimalId is not null).Select(one => new OwnersAnimal(
            new SharedAnimal(one.AnimalId!.Value, one.Species!.Value, one.Tag, one.ArrivalState!.Value, one.ArrivedAt!.Value, ShareRow.Of(one.Owners, facts.Id)),
            one.Portion!.Value, one.HungAt, one.DiseaseTest!.Value, one.Parts.ConvertAll(part => new OwnersPart(part.Kind, part.GivenAt)))).ToList();
        var products = OwnersProduct.Of(records, facts);
        var (weights, boxes) = Weighed(records, facts.Id, animals, division);
        return new OwnersJob(
            facts,
            shares[0].Cuts.ConvertAll(line => new OwnersCut(line.Group, line.Cut, line.Detail, line.PerPack)),
            animals,
            products,
            boxes,
            OwnersMoney.Of(records, facts.Id),
            [.. shares.SelectMany(one => one.Holds.Concat(one.AnimalHolds)).Concat(products.Select(one => one.Held).OfType<HoldReason>()).Distinct().Order()],
            weights,
            YieldAccounts.Of(weights, facts.SplitAgreedAt is null ? [] : [.. products.Select(one => one.OnTheWay)], facts.CuttingDoneAt is not null, facts.BoxedAt is not null, division),
            LeanYield.Of(weights, division)?.Forecast);
    }

    /// <summary>One query: a box is a weigh-in too.</summary>
    private static (JobWeights Weights, IReadOnlyList<OwnersBox> Boxes) Weighed(
        RecordsContext records, int jobId, IEnumerable<OwnersAnimal> animals, ScaleDivision division)
    {
        var weighed =
            (from weighIn in records.WeighedFor(jobId)
             join box in records.Boxes on weighIn.Id equals box.WeighedId into boxes
             from box in boxes.DefaultIfEmpty()
             select new
             {
                 weighIn.Kind,
                 weighIn.AnimalId,
                 weighIn.JobId,
                 weighIn.Net,
                 Box = (int?)box.Number,
                 TakenAt = (DateTime?)box.HandOver!.At,
                 Contents = records.BoxContents.Where(content => content.BoxId == box.Id).OrderBy(content => content.Position)
                     .Select(content => new { content.Position, content.Name, content.Packs }).ToList(),
             })
            .AsSingleQuery()
            .ToList();
        return (
            JobWeights.Of(animals.Select(one => one.Animal), weighed.Select(one => new WeighedNet(one.Kind, one.AnimalId, one.JobId, one.Net)), division),
            [
                .. weighed.Where(one => one.Box is not null).OrderBy(one => one.Box)
                    .Select(one => new OwnersBox(one.Box!.Value, one.Contents.ConvertAll(content => (content.Name, content.Packs)), one.Net, one.TakenAt))
            ]);
    }
}
