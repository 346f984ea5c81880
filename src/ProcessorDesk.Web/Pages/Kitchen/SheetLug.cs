namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>A lug with lean that a batch may draw from, in the order they were filled.</summary>
/// <param name="FreeMilligrams">By its weigh-in, less what other batches drew.</param>
public sealed record SheetLug(int JobId, int Number, long FreeMilligrams);
