using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>Opens a new shop as people do, through its forms: the first manager, hands, lugs, jobs on the table.</summary>
internal sealed class Opening : IDisposable
{
    public const decimal Tare = 3.10m;

    private readonly ShopOnThisPc _pc;
    private readonly Desk _desk;

    private Opening(ShopOnThisPc pc, Uri address) => (_pc, _desk) = (pc, new Desk(address));

    public Uri Address => _desk.Client.BaseAddress!;

    public static async Task<Opening> Of(ShopOnThisPc pc)
    {
        var opening = new Opening(pc, await pc.Start());
        var first = await opening._desk.Open("/Door/First");
        var today = await first.Send("Open the shop",
            ("Input.Code", await pc.Code()), ("Input.Name", "Mona Manager"), ("Input.Initials", "MM"), ("Input.Pin", Desk.Pin), ("Input.AgainPin", Desk.Pin));
        Assert.Equal("/Today", today.Path);
        return opening;
    }

    /// <summary>A hand with the test's PIN; their id.</summary>
    public async Task<int> Hire(string initials, StaffRole role)
    {
        await (await _desk.Open("/Office/Staff/Edit")).Send("Save",
            ("Input.Name", $"Hand {initials}"), ("Input.Initials", initials), ("Input.Role", role.ToString()), ("Input.Pin", Desk.Pin));
        return _pc.Read(records => records.Staff.Single(staff => staff.Initials == initials).Id);
    }

    public async Task AddLug(int number) => (await (await _desk.Open("/Office/Lugs")).Send("Add it",
        ("Input.Number", number.ToString(CultureInfo.InvariantCulture)), ("Input.Tare", Tare.ToString(CultureInfo.InvariantCulture)))).Expect($"Lug {number} is added");

    /// <summary>A deer of 200 lb taken in and brought to the table; its job's id.</summary>
    public async Task<int> StartJob(string owner)
    {
        var taken = await (await _desk.Open("/Counter/DropOff")).Send("Take it in",
            ("Input.Owner.Name", owner), ("Input.Owner.Phone", "715 555 0100"), ("Input.Animals[0].Tag", $"TAG {owner}"),
            ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "200"));
        taken.Expect("is taken in", owner);
        var job = int.Parse(taken.Path.Split('/')[^1], CultureInfo.InvariantCulture);
        (await (await _desk.Open($"/Cutting/Sheet/{job}")).Press("Start cutting")).Expect("Cutting has started");
        return job;
    }

    public void Dispose() => _desk.Dispose();
}
