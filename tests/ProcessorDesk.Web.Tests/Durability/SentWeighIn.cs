using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>A weight as a cutter typed it. Into a lug it is there with the filling and its ticket, or with the strike of the weight before.</summary>
/// <param name="lug">The lug's number; null for what stays in none.</param>
/// <param name="again">Why the lug is weighed again; null for its first weight.</param>
internal sealed class SentWeighIn(
    string key, int by, int job, WeighInKind kind, decimal gross, int? packs, string? note, int? lug, string? again) : SentForm(key, by)
{
    public override string Verb => "weigh at the table";

    public override string LeadsTo(string result) => $"/Cutting/WeighIn/{job}";

    public override IEnumerable<string> RowsIn(Books books, string result)
    {
        var id = int.Parse(result, CultureInfo.InvariantCulture);
        var found = Assert.Single(books.WeighIns, one => one.Id == id);
        var (full, tare) = (Weight.FromPounds(gross), lug is null ? Weight.Zero : Weight.FromPounds(Opening.Tare));
        Assert.Equal(
            (job, kind, full, tare, full - tare, packs, note, By, lug),
            (found.JobId!.Value, found.Kind, found.Gross, found.Tare, found.Net, found.Packs, found.Note, found.ById, found.Filling?.Lug.Number));
        yield return $"WeighIn {id}";
        if (found.Filling is not { } filling)
            yield break;
        var before = books.WeighIns.Where(one => one.FillingId == filling.Id && one.Id < id).MaxBy(one => one.Id);
        Assert.Equal(again is null, before is null);
        if (before is null)
        {
            yield return $"Filling {filling.Id}";
            yield return $"FillingAnimal {filling.Id}/{Assert.Single(filling.Animals).AnimalId}";
            yield return $"Ticket {Assert.Single(books.Tickets, ticket => ticket.Kind == TicketKind.Filling && ticket.TargetId == filling.Id).Number}";
            yield break;
        }

        Assert.Equal(($"weighed again: {again}", By), (before.Strike?.Because, before.Strike?.ById));
        yield return $"Strike {before.Id}";
    }
}
