using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>A drop-off as a clerk typed it. It is there whole: owner, job and order, each deer with its weight and parts, a ticket for each thing, the deposit.</summary>
internal sealed class SentDropOff(string key, int by, string owner, IReadOnlyList<SentDropOff.Deer> animals, int deposit) : SentForm(key, by)
{
    public override string Verb => "take in a job";

    public override string LeadsTo(string result) => $"/Counter/TakenIn/{result}";

    public override IEnumerable<string> RowsIn(Books books, string result)
    {
        var job = Assert.Single(books.Jobs, job => job.Owner.Name == owner);
        Assert.Equal((result, By), (job.Id.ToString(System.Globalization.CultureInfo.InvariantCulture), job.TakenById));
        yield return $"Owner {job.OwnerId}";
        yield return $"Job {job.Id}";
        // The seven muscle groups of the menu, and the one other person that was typed.
        Assert.Equal(7, job.CutOrder.Count);
        foreach (var line in job.CutOrder)
            yield return $"CutOrderLine {job.Id}/{line.Position}";
        Assert.Equal($"Hunter {owner}", Assert.Single(job.People).Name);
        yield return $"JobPerson {job.People.Single().Id}";
        yield return Ticket(books, TicketKind.Claim, job.Id);
        var payment = Assert.Single(books.Payments, payment => payment.JobId == job.Id);
        Assert.Equal((Money.FromDollars(deposit), true, By), (payment.Amount, payment.IsDeposit, payment.ById));
        yield return $"Payment {payment.Id}";
        Assert.Equal(animals.Select(deer => deer.Tag), job.Shares.OrderBy(share => share.AnimalId).Select(share => share.Animal.Tag));
        foreach (var row in animals.SelectMany(deer => RowsOf(books, deer, job.Shares.Single(share => share.Animal.Tag == deer.Tag))))
            yield return row;
    }

    private IEnumerable<string> RowsOf(Books books, Deer deer, Share share)
    {
        var animal = share.Animal;
        yield return $"Share {share.Id}";
        yield return $"Animal {animal.Id}";
        yield return Ticket(books, TicketKind.Carcass, animal.Id);
        var arrival = Assert.Single(books.WeighIns, one => one.AnimalId == animal.Id);
        Assert.Equal((WeighInKind.Arrival, Weight.FromPounds(deer.Pounds), By), (arrival.Kind, arrival.Net, arrival.ById));
        yield return $"WeighIn {arrival.Id}";
        Assert.Equal(deer.Parts.Order(), animal.Parts.Select(part => part.Kind).Order());
        foreach (var part in animal.Parts)
        {
            yield return $"Part {part.Id}";
            yield return Ticket(books, TicketKind.Part, part.Id);
        }
    }

    private static string Ticket(Books books, TicketKind kind, int target) =>
        $"Ticket {Assert.Single(books.Tickets, ticket => ticket.Kind == kind && ticket.TargetId == target).Number}";

    public sealed record Deer(string Tag, decimal Pounds, IReadOnlyList<PartKind> Parts);
}
