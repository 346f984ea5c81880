using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>How a job, its animals and its money are named on the day's page.</summary>
internal static class TodayWords
{
    public static string Whose(TodayJob job) => $"Job {job.Number}, {job.Owner}";

    public static string Name(Species species, string? tag) => tag is null ? $"{Wording.Of(species)}, no tag" : $"{Wording.Of(species)}, tag {tag}";

    public static string Animals(TodayJob job) => string.Join("; ", job.Animals.Select(animal => Name(animal.Species, animal.Tag)));

    public static string Money(TodayJob job) => !job.IsInvoiced ? "Not invoiced" : job.Balance <= Trade.Money.Zero ? "Paid" : $"{job.Balance.Print()} owed";
}
