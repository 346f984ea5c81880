using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Yields;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Trace;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>One job, all of it, for every hand: what stops it, where it is, whose it is, what was weighed, agreed and paid.</summary>
public sealed class JobModel(RecordsContext records, ShopDay shop, OwnerLinks links) : StationPage
{
    public JobHub Hub { get; private set; } = null!;

    public Job Job => Hub.Job;

    public IActionResult OnGet(int id)
    {
        if (JobHub.Read(records, id, shop.Settings.BenchDivision) is not { } hub)
            return NotFound();
        Hub = hub;
        return Page();
    }

    /// <summary>What this hand can do with the job at the stations, as words and addresses.</summary>
    public IEnumerable<(string Words, string Address)> Doors
    {
        get
        {
            (string Words, string Page, string Key, bool Fits)[] doors =
            [
                ("Change the order", "/Counter/Order", "job", Job.HandedOverAt is null),
                ("Cut sheet", "/Cutting/Sheet", "id", true),
                ("Split of the trim", "/Grind/Split", "id", Job.CuttingStartedAt is not null),
                ("Boxes", "/Freezer/Job", "id", Job.CuttingDoneAt is not null),
                ("Pickup and money", "/Pickup/Job", "id", true),
                ("Print tickets", "/Counter/Tickets", "job", true),
                ("Print the claim", "/Counter/Claim", "job", true),
            ];
            return from door in doors
                   where door.Fits
                   let address = Url.IfOpen(SignedIn.Role, door.Page, door.Key, Job.Id)
                   where address is not null
                   select (door.Words, address);
        }
    }

    /// <summary>Where the weight went so far, drawn; empty before there is a way to draw.</summary>
    public string WayPicture
    {
        get
        {
            IReadOnlyList<WayProduct> products = Hub.Money.Agreed is { } split ? [.. split.Given.Select(given => given.OnTheWay)] : [];
            var way = YieldAccounts.Of(Hub.Weights, products, Job.CuttingDoneAt is not null, Job.BoxedAt is not null, shop.Settings.BenchDivision).Way;
            return way.Count > 1 ? Paper.WayPicture.Svg(way, "Where the weight went") : "";
        }
    }

    public string? ToAnimal(int id) => Url.IfOpen(SignedIn.Role, "/Counter/Animal", "id", id);

    public string? ToHanging(int id) => Url.IfOpen(SignedIn.Role, "/Cooler/Hang", "id", id);

    public string? ToOwner => Url.IfOpen(SignedIn.Role, "/Counter/Owner", "id", Job.OwnerId);

    public string? ToInvoice(int id) => Url.IfOpen(SignedIn.Role, "/Pickup/Invoice", "id", id);

    /// <summary>What the owner sees, here in the shop; it opens whether or not a public address is set.</summary>
    public string OwnersPage => $"{OwnerLinks.Folder}/{links.Of(Job.Number, Job.LinkGeneration)}";

    /// <summary>The page with the link to give out; null where none may be, or not by this hand.</summary>
    public string? ToLink => IsOpenToOwners ? Url.IfOpen(SignedIn.Role, "/Counter/OwnersPage", "job", Job.Id) : null;

    public bool IsOpenToOwners => shop.Settings.OpenAddress is not null;

    /// <summary>The way of the job so far, the newest first.</summary>
    public IEnumerable<(string What, DateTime At)> Way => HubWay.Of(Hub);

    public string? ToTrace(TracedKind kind, int id) => TraceAddress.IfOpen(SignedIn, kind, id);

    public string? ToBatch(int id) => Url.IfOpen(SignedIn.Role, "/Kitchen/Batch", "id", id);

    public string Name(Animal animal) => animal.Tag is null ? $"{Wording.Of(animal.Species)}, no tag" : $"{Wording.Of(animal.Species)}, tag {animal.Tag}";

    public string? Hung(Animal animal) => animal.HungAt is { } hung
        ? HangingGuidance.For(animal.Species).Say(shop.DayOf(hung), Job.CuttingStartedAt is { } cut ? shop.DayOf(cut) : shop.Today).Text
        : null;

    public AnimalWeights WeightsOf(Animal animal) => Hub.Weights.Animals.Single(one => one.AnimalId == animal.Id);

    public string Amount(GrindOrder ask) => ask.Kind switch
    {
        AskKind.OwnLean => $"{Print(ask.Amount)} of own meat in it",
        AskKind.Finished => $"{Print(ask.Amount)} finished",
        AskKind.Percent => $"{ask.Percent.Print()} of the lean",
        AskKind.Rest => "the rest",
    };

    public string Print(Weight weight) => shop.Print(weight);

    public string Rail(Weight? weight) => weight is { } known ? shop.PrintRail(known) : "–";

    public string Date(DateOnly day) => shop.Date(day);

    public string Date(DateTime utc) => shop.Date(utc);

    public string Moment(DateTime utc) => shop.Moment(utc);

    public bool IsLate => Job.HandedOverAt is null && Job.PromisedFor < shop.Today;
}
