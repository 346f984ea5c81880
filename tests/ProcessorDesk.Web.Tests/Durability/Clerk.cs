using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>Takes in one owner after another, with one deer or two.</summary>
internal sealed class Clerk(int by, string initials, int seed) : Writer(by, Button)
{
    private const string Button = "Take it in";

    private static readonly PartKind[] s_parts = [PartKind.Antlers, PartKind.Heart, PartKind.Hide];

    private readonly Random _random = new(seed);
    private int _owners;

    protected override async Task<(Screen Page, SentForm Entry)> Fresh()
    {
        var page = await Open("/Counter/DropOff");
        var owner = $"Owner {initials} {++_owners}";
        var deposit = 10 + _random.Next(8) * 5;
        var animals = new List<SentDropOff.Deer>();
        for (var count = _random.Next(3) == 0 ? 2 : 1; animals.Count < count;)
        {
            if (animals.Count > 0)
                page = await page.Press("Add another animal");
            animals.Add(Describe(page, animals.Count));
        }

        var form = page.Form(Button);
        form.Fill("Input.Owner.Name", owner);
        form.Fill("Input.Owner.Phone", "715 555 0199");
        form.Fill("Input.People[0].Name", $"Hunter {owner}");
        form.Fill("Input.Deposit.Amount", deposit.ToString(CultureInfo.InvariantCulture));
        return (page, new SentDropOff(SentForm.KeyOf(page, Button), By, owner, animals, deposit));
    }

    private SentDropOff.Deer Describe(Screen page, int at)
    {
        var form = page.Form(Button);
        var deer = new SentDropOff.Deer($"{initials}-{_owners}-{at}", 90m + _random.Next(120) * 0.5m, [.. s_parts.Where(_ => _random.Next(2) == 0)]);
        form.Fill($"Input.Animals[{at}].Tag", deer.Tag);
        form.Fill($"Input.Animals[{at}].State", "FieldDressed");
        form.Fill($"Input.Animals[{at}].Weight", deer.Pounds.ToString(CultureInfo.InvariantCulture));
        foreach (var part in deer.Parts)
            form.Fill($"Input.Animals[{at}].Parts", part.ToString());
        return deer;
    }
}
