using System.Globalization;
using System.Net;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>Weighs one job's meat at the table: trim into lugs of its own, now and then the same lug again, packs, bone and what is thrown out.</summary>
internal sealed class Cutter(int by, int job, IReadOnlyList<int> lugs, int seed) : Writer(by, Button)
{
    private const string Button = "Save the weight";

    private readonly Random _random = new(seed);
    private readonly HashSet<int> _filled = [];

    protected override async Task<(Screen Page, SentForm Entry)> Fresh()
    {
        var page = await Open($"/Cutting/WeighIn/{job}");
        // No figure is eight times another, so that the page never asks whether a point has slipped.
        var gross = 10m + _random.Next(3_000) / 100m;
        page.Form(Button).Fill("Input.Gross", gross.ToString(CultureInfo.InvariantCulture));
        return _random.Next(lugs.Count == 0 ? 3 : 6) switch
        {
            0 => Loose(page, gross, WeighInKind.Bone, null, null),
            1 => Loose(page, gross, WeighInKind.Discard, null, $"bloodshot {_random.Next(100)}"),
            2 => Loose(page, gross, WeighInKind.CutPack, 1 + _random.Next(20), null),
            _ => await InLug(page, gross, lugs[_random.Next(lugs.Count)]),
        };
    }

    private (Screen, SentForm) Loose(Screen page, decimal gross, WeighInKind kind, int? packs, string? why)
    {
        page.Form(Button).Fill("Input.Kind", kind.ToString());
        page.Form(Button).Fill("Input.Packs", packs?.ToString(CultureInfo.InvariantCulture) ?? "");
        page.Form(Button).Fill("Input.Why", why ?? "");
        return (page, new SentWeighIn(SentForm.KeyOf(page, Button), By, job, kind, gross, packs, why, null, null));
    }

    private async Task<(Screen, SentForm)> InLug(Screen page, decimal gross, int lug)
    {
        page.Form(Button).Fill("Input.Lug", lug.ToString(CultureInfo.InvariantCulture));
        if (_filled.Add(lug))
            return (page, new SentWeighIn(SentForm.KeyOf(page, Button), By, job, WeighInKind.LeanTrim, gross, null, null, lug, null));
        // A lug that was weighed is asked about first; the answer goes with the same form.
        var asked = await page.Press(Button);
        Assert.Equal(HttpStatusCode.OK, asked.Status);
        Assert.Contains($"Lug {lug} was weighed already", asked.Text, StringComparison.Ordinal);
        var because = $"more came in, {_random.Next(1_000)}";
        asked.Form(Button).Fill("Input.Again", "true");
        asked.Form(Button).Fill("Input.AgainBecause", because);
        return (asked, new SentWeighIn(SentForm.KeyOf(asked, Button), By, job, WeighInKind.LeanTrim, gross, null, null, lug, because));
    }
}
