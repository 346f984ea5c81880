using Microsoft.Playwright;
using ProcessorDesk.Browser.Tests.Screens;
using Xunit;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>The plan of the day is looked at, changed by hand, seen to cost something, changed otherwise, and taken.</summary>
internal static class DayMorning
{
    /// <param name="jobs">Job numbers by owner.</param>
    public static async Task Plan(IPage page, DayEyes eyes, IReadOnlyDictionary<string, int> jobs)
    {
        var plan = await PlanScreen.Open(page);
        await eyes.Look("plan of the day");
        var batches = await plan.Batches();
        await ShowsWhoStaysOut(plan, batches);
        ShowsTheOrder(batches);
        // From pork-free to pork, from plain to milk nothing is cleaned; from cured to uncured once: 15 min, common practice.
        await plan.Says("Cleaning between batches: 15 min.");

        // 8 × 9 lb lean are 96 lb of block and 97.92 green: the mixer of 50 lb is filled twice.
        var hot = await plan.Loads($"{DayGoods.Hot}, pooled");
        Assert.Equal(["48.96 lb", "48.96 lb"], hot.Select(load => load[^1]));
        Assert.Equal(8, hot.Sum(load => load[1].Split("job ").Length - 1));

        await plan.Move($"Dale Moss, job {jobs["Dale Moss"]}, {DayGoods.Hot}", "A load of its own");
        // Two pooled and one of an owner apart.
        Assert.Contains($"{DayGoods.Hot}: 4 loads; the plan has 3.", await plan.Costs(), StringComparison.Ordinal);
        await eyes.Look("plan changed by hand");
        await plan.BackToTheProposed();
        await plan.Move($"{DayOwners.Later}, job {jobs[DayOwners.Later]}, {DayGoods.Plain}", "Another day");
        Assert.Contains("Nothing: it is as good as the plan.", await plan.Costs(), StringComparison.Ordinal);
        Assert.Contains(await plan.NotToday(), row => row[0].StartsWith(DayOwners.Later, StringComparison.Ordinal) && row[3] == "Left for another day by hand.");
        await plan.Take();
        await eyes.Look("kitchen with the day before it");
    }

    private static async Task ShowsWhoStaysOut(PlanScreen plan, IReadOnlyList<string> batches)
    {
        var held = (await plan.NotToday()).Where(row => row[0].StartsWith(DayOwners.Held, StringComparison.Ordinal)).ToList();
        Assert.Equal([DayGoods.Hot, DayGoods.Rings], held.Select(row => row[1]).Order());
        Assert.All(held, row => Assert.Contains("On hold. Tag KD-18: waiting for the disease test", row[3], StringComparison.Ordinal));
        foreach (var batch in batches)
            Assert.DoesNotContain(await plan.Loads(batch), load => load[1].Contains(DayOwners.Held, StringComparison.Ordinal));
    }

    /// <summary>Nine pooled and seven own; what has no pork in it before all that has; milk last of all, and said so.</summary>
    private static void ShowsTheOrder(IReadOnlyList<string> batches)
    {
        Assert.Equal(16, batches.Count);
        Assert.Equal(9, batches.Count(batch => batch.Contains(", pooled", StringComparison.Ordinal)));
        foreach (var owner in new[] { DayOwners.Wronged, DayOwners.Mistaken, DayOwners.TooEarly, "Wim Alder", "Yara Frost", "Zeno Bell", "Otis Quill" })
            Assert.Single(batches, batch => batch.Contains($", {owner}", StringComparison.Ordinal));
        var porkFree = batches.TakeWhile(batch => batch.EndsWith("No pork", StringComparison.Ordinal)).ToList();
        Assert.Equal(DayGoods.Products.Where(product => !product.HasPork).Select(product => product.Name).Order(), porkFree.Select(batch => DayGoods.Products.Single(product => batch.StartsWith(product.Name, StringComparison.Ordinal)).Name).Distinct().Order());
        Assert.DoesNotContain(batches.Skip(porkFree.Count), batch => batch.Contains("No pork", StringComparison.Ordinal));
        Assert.Equal($"{DayGoods.Cheddar}, pooled Contains milk", batches[^1]);
        Assert.Single(batches, batch => batch.Contains("Contains", StringComparison.Ordinal));
    }
}
