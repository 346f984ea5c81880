using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Trade.Kitchen.Planning;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The loads of the day: those of the plan, and what the hand changed of them.</summary>
/// <param name="Batches">In the order they are made.</param>
/// <param name="Waits">Allotments that are in no load, and why.</param>
public sealed record DayLoads(IReadOnlyList<DayLoads.Batch> Batches, IReadOnlyList<LeftWaiting> Waits)
{
    /// <summary>In the order of the batches.</summary>
    public IReadOnlyList<HandLoad> All => [.. Batches.SelectMany(batch => batch.Loads)];

    /// <summary>Tells one state of the plan from another, so that what is saved is what was seen.</summary>
    public string Mark => string.Join(';', All.Select(load => string.Join('+', load.Pieces.Select(piece => FormattableString.Invariant($"{piece.Allotment}={piece.Green.Milligrams}")))));

    public static DayLoads Of(DayPlan plan, DayQuestion question, IReadOnlyList<DayMove> moves)
    {
        var loads = HandLoad.Of(plan).ToList();
        var asked = new HashSet<int>();
        foreach (var move in moves.Where(move => question.Meat.Any(meat => meat.Id == move.Allotment) && (move.To is null || (move.To > 0 && move.To <= loads.Count))))
        {
            loads = loads.ConvertAll(load => load with { Pieces = [.. load.Pieces.Where(piece => piece.Allotment != move.Allotment)] });
            asked.Remove(move.Allotment);
            if (move.Waits)
                asked.Add(move.Allotment);
            else if (move.To is { } number)
                loads[number - 1] = loads[number - 1] with { Pieces = [.. loads[number - 1].Pieces, new HandPiece(move.Allotment, question.MeatOf(move.Allotment).Part.Green)] };
            else
                loads.AddRange(Alone(question.MeatOf(move.Allotment), question.Settings, loads.Count));
        }

        var taken = loads.SelectMany(load => load.Pieces).Select(piece => piece.Allotment).ToHashSet();
        return new DayLoads(
            Grouped(loads, question),
            [
                .. plan.Waiting.Where(left => !taken.Contains(left.Meat.Id) && !asked.Contains(left.Meat.Id)),
                .. asked.Select(id => new LeftWaiting(question.MeatOf(id), "Left for another day by hand.")),
            ]);
    }

    private static HandLoad[] Alone(WaitingMeat meat, DaySettings settings, int before) =>
        [.. MixerLoads.Plan([meat.Part], settings.MixerCapacity, settings.Division).Select((load, i) => new HandLoad(before + i + 1, [new HandPiece(meat.Id, load.Green)]))];

    private static List<Batch> Grouped(List<HandLoad> loads, DayQuestion question)
    {
        var batches = new List<Batch>();
        foreach (var group in loads.Where(load => load.Pieces.Count > 0).GroupBy(load => KindOf(load, question)))
        {
            var meat = question.MeatOf(group.First().Pieces[0].Allotment);
            var cleaned = batches.Count == 0 ? [] : question.Settings.Minutes.Between(batches[^1].Profile, meat.Profile);
            batches.Add(new Batch(meat.Product, group.Key.OwnOf, meat.Profile, [.. group], cleaned));
        }

        return batches;
    }

    private static (int Product, Trade.Species Species, bool HoldsPork, int? OwnOf) KindOf(HandLoad load, DayQuestion question)
    {
        var meat = load.Pieces.Select(piece => question.MeatOf(piece.Allotment)).ToList();
        return (meat[0].Product.Key, meat[0].Species, meat[0].HoldsPork, meat.Find(one => !one.IsPooled)?.Owner);
    }

    /// <param name="OwnOf">The owner's key; null where owners agreed to pooling.</param>
    public sealed record Batch(KitchenProduct Product, int? OwnOf, CleaningProfile Profile, IReadOnlyList<HandLoad> Loads, IReadOnlyList<Cleaning> CleanedBefore);
}
