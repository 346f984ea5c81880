using ProcessorDesk.Records;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What comes next, in a sentence.</summary>
internal static class KitchenWords
{
    public static string Next(BatchProgress progress, IEnumerable<HoldReason> holds, ShopDay shop) => progress.NextAt(shop.Now) switch
    {
        NextInKitchen.Held => $"On hold: {string.Join(", ", holds.Distinct().Select(Wording.Of))}",
        NextInKitchen.Draw => $"Draw the meat for load {progress.OpenLoad}",
        NextInKitchen.Mix => $"Mix load {progress.OpenLoad}",
        NextInKitchen.Rest => $"Rests until {shop.Moment(progress.RestedAt!.Value)}",
        NextInKitchen.Stuff => progress.RestedAt is null ? "Stuff it" : "Rested: stuff it",
        NextInKitchen.Heat => "Into the smokehouse or oven",
        NextInKitchen.Cook => "Cooking: write the readings down",
        NextInKitchen.Chill => "Chilling: write the readings down",
        NextInKitchen.Weigh => progress.IsHeated ? "Weigh what came out" : "Stuff or pack it, then weigh it",
        NextInKitchen.Release => "Weighed: look at the record and release it",
    };
}
