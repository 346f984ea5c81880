using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

public sealed class DropOffModel(RecordsContext records, Verbs verbs, ShopDay shop) : OrderPage
{
    [BindProperty]
    public DropOffInput Input { get; set; } = new();

    /// <summary>The job that animals are added to; null for a new one.</summary>
    public JoinedJob? Joined { get; private set; }

    public TagRule TagRule => shop.Settings.TagRule;

    /// <summary>Where typing starts: "search", "match", "name", "animal".</summary>
    public string Focus { get; private set; } = "";

    protected override OrderInput Order => Input.Order;

    public void OnGet(int? owner, int? job)
    {
        Input.Owner.Id = owner;
        Input.JobId = job;
        Input.Order.PromisedFor = shop.Today.AddDays(shop.Settings.PromiseDays).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        Load();
        Focus = Input.Owner.Id is null ? "search" : "animal";
    }

    public IActionResult OnPost()
    {
        if (Input.JobId is null && Input.Owner.IsLooking)
            return OnPostFind();
        return Save(whole: true);
    }

    public IActionResult OnPostTicketNow() => Save(whole: false);

    public IActionResult OnPostFind()
    {
        Input.Owner.Look(records);
        Focus = Input.Owner.Id is not null ? "animal" : Input.Owner.Matches!.Found.Count > 0 ? "match" : Input.Owner.Name == "" ? "search" : "name";
        return Changed(() => { });
    }

    /// <summary>The list of owners as one types.</summary>
    public IActionResult OnPostOwners() => Partial("_OwnerMatches", new OwnerMatches(Input.Owner.Search.Trim(), OwnerMatch.Find(records, Input.Owner.Search)));

    public IActionResult OnPostOwner(int id)
    {
        Focus = "animal";
        return Changed(() => Input.Owner.Id = id);
    }

    public IActionResult OnPostOtherOwner()
    {
        Focus = "search";
        return Changed(() => (Input.Owner.Id, Input.Owner.Search) = (null, ""));
    }

    public IActionResult OnPostAddAnimal()
    {
        Focus = "animal";
        return Changed(() => Input.Animals.Add(Input.Animals[^1].Next()));
    }

    public IActionResult OnPostRemoveAnimal(int at) => Changed(() =>
    {
        if (at >= 0 && at < Input.Animals.Count && Input.Animals.Count > 1) Input.Animals.RemoveAt(at);
    });

    private IActionResult Save(bool whole)
    {
        Input.Order.Offered = Offer.Of(records);
        var facts = whole ? Input.Read(ModelState, shop) : Input.ReadLeast(ModelState, shop);
        if (!ModelState.IsValid)
            return Shown();
        var outcome = verbs.Run(Input.JobId is null ? "take in a job" : "add animals to a job", Hand, FormKey, act => Input.JobId is { } job
            ? records.JoinJob(job, facts.Animals, shop.Today, act)
            : records.TakeIn(facts, shop.Today, act));
        if (outcome.IsDone)
            return RedirectToPage("/Counter/TakenIn", new { job = outcome.Result });
        ModelState.Add(outcome.Findings);
        return Shown();
    }

    protected override void Load()
    {
        if (Input.JobId is { } job)
        {
            Joined = JoinedJob.Of(records, job);
            Input.Owner.Id = Joined?.OwnerId;
        }

        Input.Owner.Chosen = Input.Owner.Id is { } id ? OwnerMatch.Of(records, id) : null;
        Input.Owner.Id = Input.Owner.Chosen?.Id;
        foreach (var (animal, i) in Input.Animals.Select((animal, i) => (animal, i)))
            animal.Standing = (i + 1, Input.Animals.Count);
        if (Input.Order.Offered.Count == 0)
            Input.Order.Offered = Offer.Of(records);
        if (Joined is null)
            Outlook = Outlook.Of(records, shop, Input.Order, [.. Input.Animals.Select(animal => (animal, Ratio.One))]);
    }
}
