using System.Text;
using ProcessorDesk.Records;
using ProcessorDesk.Seasons.Tests.Filing;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>
/// The acts of the seasons, planned in any order and played by their time, as the app's verbs would run them: each with its hand,
/// its journal entry and its form key. What would come after the last moment is left in the air, as in a shop seen on that day.
/// </summary>
internal sealed class Season
{
    private readonly SeasonRows _rows;
    private readonly DateTime _ends;
    private readonly PriorityQueue<Action, (DateTime, long)> _planned = new();
    private readonly StringBuilder _changes = new();
    private string _lastHash;
    private long _order;

    public Season(SeasonRows rows, ShopFloor floor, Dice dice, DateTime ends)
    {
        (_rows, Floor, Dice, _ends) = (rows, floor, dice, ends);
        _lastHash = floor.LastHash;
        Kitchen = new InTheKitchen(this);
        Larder = new InTheLarder(this);
    }

    public ShopFloor Floor { get; }

    public Dice Dice { get; }

    public InTheKitchen Kitchen { get; }

    public InTheLarder Larder { get; }

    /// <summary>Whether something of the season is still to come.</summary>
    public bool IsOver => _planned.Count == 0;

    /// <summary>UTC; the moment of the act being played.</summary>
    public DateTime Now { get; private set; }

    /// <summary>The hand of the act being played.</summary>
    public Hand Hand { get; private set; } = Hand.SetUp;

    public int NextJob { get; private set; } = 1001;

    public int NextInvoice { get; private set; } = 1;

    public int NextBatch { get; private set; } = 1;

    public TicketCode NextTicket { get; private set; } = TicketCode.First;

    public int TakeJobNumber() => NextJob++;

    public int TakeInvoiceNumber() => NextInvoice++;

    public int TakeBatchNumber() => NextBatch++;

    public void Plan(DateTime at, string verb, StaffRole role, string station, Action work)
    {
        if (at > _ends)
            return;
        _planned.Enqueue(() => Do(at, verb, Floor.Hand(role, station, Dice), work), (at, _order++));
    }

    /// <summary>Plays all that is planned, and what is planned meanwhile, up to a moment.</summary>
    public void PlayUntil(DateTime moment)
    {
        while (_planned.TryPeek(out var act, out var when) && when.Item1 <= moment)
        {
            _planned.Dequeue();
            act();
        }
    }

    public void Add(object entity, object? under = null) => Note(entity, _rows.Add(entity, under), "Added");

    /// <summary>Says in the journal that something kept before is another now.</summary>
    public void Changed(object entity) => Note(entity, _rows.KeyOf(entity), "Modified");

    public void AddTicket(TicketKind kind, int targetId)
    {
        Add(new Ticket(NextTicket, kind, targetId, Now));
        NextTicket = NextTicket.Next();
    }

    private void Do(DateTime at, string verb, Hand hand, Action work)
    {
        (Now, Hand) = (at, hand);
        _changes.Clear().Append('[');
        work();
        if (_changes.Length == 1)
            return;
        _rows.Add(new FormKey(Dice.Key(), "", at));
        var entry = new JournalEntry(at, hand, verb, _changes.Append(']').ToString(), _lastHash);
        _rows.Add(entry);
        _lastHash = entry.Hash;
    }

    /// <summary>As the journal says it, but for the figures: what was changed, by its key.</summary>
    private void Note(object entity, string key, string act) =>
        _changes.Append(_changes.Length == 1 ? "" : ",")
            .Append("{\"what\":\"").Append(entity.GetType().Name).Append("\",\"key\":\"").Append(key).Append("\",\"act\":\"").Append(act)
            .Append("\",\"before\":{},\"after\":{}}");
}
