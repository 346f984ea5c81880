using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Web.Pages.Freezer;

/// <summary>What is to be boxed, what of it waits in the kitchen, and where boxes stand.</summary>
public sealed record FreezerShelves(IReadOnlyList<FreezerShelves.OpenJob> Jobs, IReadOnlyList<FreezerShelves.Place> Places)
{
    /// <summary>Three queries.</summary>
    public static FreezerShelves Read(RecordsContext records)
    {
        var open = records.Jobs.AsNoTracking().Where(job => job.HandedOverAt == null && job.BoxedAt == null && job.CuttingDoneAt != null);
        var jobs = open
            .OrderBy(job => job.PromisedFor == null).ThenBy(job => job.PromisedFor).ThenBy(job => job.Number)
            .Select(job => new
            {
                job.Id,
                job.Number,
                Owner = job.Owner.Name,
                job.PromisedFor,
                IsMade = job.MadeAt != null,
                HasCuts = records.WeighIns.Any(one => one.JobId == job.Id && one.Kind == WeighInKind.CutPack && one.Strike == null),
                HasCutsBoxed = records.Boxes.Any(box => box.JobId == job.Id && box.UnpackedAt == null && box.Contents.Any(content => content.AllotmentId == null)),
                Boxes = records.Boxes.Count(box => box.JobId == job.Id && box.UnpackedAt == null),
            })
            .ToList();
        var products =
            (from job in open
             join split in records.AgreedSplits on job.Id equals split.JobId
             join one in records.GrindAllotments on split.Id equals one.AgreedSplitId
             where split.WithdrawnAt == null && one.Green.Milligrams > 0
             join entry in records.BatchEntries.Where(entry => entry.LeftAt == null) on one.Id equals entry.AllotmentId into entries
             from entry in entries.DefaultIfEmpty()
             orderby one.Position
             select new
             {
                 JobId = job.Id,
                 one.Product.Name,
                 IsReleased = entry.Batch.ReleasedAt != null,
                 IsOver = entry.Batch.EndedAt != null,
                 IsBoxed = records.Boxes.Any(box => box.JobId == job.Id && box.UnpackedAt == null && box.Contents.Any(content => content.AllotmentId == one.Id)),
             })
            .ToList().ToLookup(one => one.JobId);
        var boxes = records.Boxes.AsNoTracking().Here()
            .Select(box => new { box.Place, box.Number, box.JobId, JobNumber = box.Job.Number, Owner = box.Job.Owner.Name })
            .ToList();
        return new FreezerShelves(
            [
                .. jobs.Select(job => new OpenJob(
                    job.Id, job.Number, job.Owner, job.PromisedFor, job.IsMade, job.Boxes,
                    [.. (job.HasCuts && !job.HasCutsBoxed ? (string[])["Cuts"] : []).Concat(products[job.Id].Where(one => one.IsReleased && !one.IsBoxed).Select(one => one.Name))],
                    [.. products[job.Id].Where(one => !one.IsReleased && !one.IsOver).Select(one => one.Name)]))
            ],
            [
                .. boxes.GroupBy(box => box.Place ?? "", StringComparer.OrdinalIgnoreCase).OrderBy(place => place.Key, StringComparer.OrdinalIgnoreCase)
                    .Select(place => new Place(place.Key, place.Count(),
                    [
                        .. place.GroupBy(box => (box.JobId, box.JobNumber, box.Owner)).OrderBy(job => job.Key.JobNumber)
                            .Select(job => new Standing(job.Key.JobId, job.Key.JobNumber, job.Key.Owner, [.. job.Select(box => box.Number).Order()]))
                    ]))
            ]);
    }

    /// <param name="Boxes">How many were packed, those that left with them.</param>
    /// <param name="ToBox">What is ready and in no box yet.</param>
    /// <param name="InKitchen">What is not released yet.</param>
    public sealed record OpenJob(
        int Id, int Number, string Owner, DateOnly? PromisedFor, bool IsMade, int Boxes, IReadOnlyList<string> ToBox, IReadOnlyList<string> InKitchen)
    {
        /// <summary>Everything known is in boxes; a hand has to say that it is all.</summary>
        public bool OnlyToSay => IsMade && ToBox.Count == 0;

        public bool IsForFreezer => ToBox.Count > 0 || OnlyToSay;
    }

    /// <param name="Name">Empty for boxes whose place nobody noted.</param>
    public sealed record Place(string Name, int Boxes, IReadOnlyList<Standing> Jobs);

    public sealed record Standing(int JobId, int Number, string Owner, IReadOnlyList<int> Boxes);
}
