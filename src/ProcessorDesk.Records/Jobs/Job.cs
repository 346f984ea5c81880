using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One owner's order, from the door to the truck. Its state is its facts; see <see cref="Stage"/>.</summary>
public sealed class Job : IVersioned
{
    private readonly List<CutOrderLine> _cutOrder = [];
    private readonly List<GrindOrder> _asks = [];
    private readonly List<JobPerson> _people = [];
    private readonly List<Share> _shares = [];

    private Job()
    {
    }

    public Job(int number, Owner owner, DateTime takenAt, int takenById, int priceListId)
    {
        Number = number;
        Owner = owner;
        TakenAt = takenAt;
        TakenById = takenById;
        PriceListId = priceListId;
        SheetRevision = 1;
        Pooling = Pooling.Own;
        Wrap = PackWrap.Vacuum;
    }

    public int Id { get; private set; }

    /// <summary>The number people say; a series without gaps.</summary>
    public int Number { get; private set; }

    public int OwnerId { get; private set; }

    public Owner Owner { get; private set; } = null!;

    public DateTime TakenAt { get; private set; }

    public int TakenById { get; private set; }

    public int PriceListId { get; private set; }

    public PriceList PriceList { get; private set; } = null!;

    public DateOnly? PromisedFor { get; private set; }

    public Pooling Pooling { get; private set; }

    public PackWrap Wrap { get; private set; }

    /// <summary>No pork in anything of this owner's: added fat, casings, the order on the equipment.</summary>
    public bool NoPork { get; private set; }

    public string? Notes { get; private set; }

    /// <summary>False for "ticket now, details after": such a job can't be cut or closed.</summary>
    public bool DetailsComplete { get; private set; }

    /// <summary>The number a printed cut sheet bears.</summary>
    public int SheetRevision { get; private set; }

    public DateTime? CuttingStartedAt { get; private set; }

    public DateTime? CuttingDoneAt { get; private set; }

    public DateTime? SplitAgreedAt { get; private set; }

    /// <summary>When the last product was released, or there was none to make; null while something is to be made.</summary>
    public DateTime? MadeAt { get; private set; }

    /// <summary>When somebody said that everything is in boxes.</summary>
    public DateTime? BoxedAt { get; private set; }

    public int? BoxedById { get; private set; }

    /// <summary>When the last of it left.</summary>
    public DateTime? HandedOverAt { get; private set; }

    public int? HandedOverById { get; private set; }

    public string? HandedOverTo { get; private set; }

    /// <summary>Raised to make the links given out before useless.</summary>
    public int LinkGeneration { get; private set; } = 1;

    public int Version { get; private set; }

    public IReadOnlyCollection<CutOrderLine> CutOrder => _cutOrder;

    public IReadOnlyCollection<GrindOrder> Asks => _asks;

    public IReadOnlyCollection<JobPerson> People => _people;

    public IReadOnlyCollection<Share> Shares => _shares;

    private static Finding AlreadyGone => new("", "This job was handed over, so nothing of it changes any more.");

    public bool CutsLocked => CuttingStartedAt is not null;

    public bool AsksLocked => SplitAgreedAt is not null;

    public JobStage Stage => StageOf(DetailsComplete, CuttingStartedAt, CuttingDoneAt, SplitAgreedAt, MadeAt, BoxedAt, HandedOverAt);

    /// <summary>The stage from the facts alone, for lists that read columns.</summary>
    public static JobStage StageOf(
        bool detailsComplete, DateTime? cuttingStartedAt, DateTime? cuttingDoneAt, DateTime? splitAgreedAt, DateTime? madeAt, DateTime? boxedAt, DateTime? handedOverAt) =>
        (detailsComplete, cuttingStartedAt, cuttingDoneAt, splitAgreedAt, madeAt, boxedAt, handedOverAt) switch
        {
            (_, _, _, _, _, _, not null) => JobStage.HandedOver,
            (_, _, _, _, _, not null, _) => JobStage.Boxed,
            (_, _, _, _, not null, _, _) => JobStage.Made,
            (_, _, _, not null, _, _, _) => JobStage.SplitAgreed,
            (_, _, not null, _, _, _, _) => JobStage.TrimWeighed,
            (_, not null, _, _, _, _, _) => JobStage.OnTable,
            (true, _, _, _, _, _, _) => JobStage.InCooler,
            (false, _, _, _, _, _, _) => JobStage.DetailsMissing,
        };

    public void Arrange(DateOnly? promisedFor, Pooling pooling, PackWrap wrap, bool noPork, string? notes)
    {
        PromisedFor = promisedFor;
        Pooling = pooling;
        Wrap = wrap;
        NoPork = noPork;
        Notes = Texts.OrNull(notes);
    }

    public void CompleteDetails() => DetailsComplete = true;

    public void PutPeople(IEnumerable<JobPerson> people)
    {
        _people.Clear();
        _people.AddRange(people);
    }

    /// <summary>Replaces the cut order; refused from the first knife on.</summary>
    public Finding? OrderCuts(IEnumerable<CutOrderLine> lines)
    {
        if (HandedOverAt is not null)
            return AlreadyGone;
        if (CutsLocked)
            return new Finding("CutOrder", "Cutting has started, so the cut order is locked. Note the change for the cutter and ask at the table.");
        _cutOrder.Clear();
        _cutOrder.AddRange(lines);
        return null;
    }

    /// <summary>Replaces the grind asks; refused once the split is agreed.</summary>
    public Finding? OrderGrind(IReadOnlyList<GrindOrder> asks)
    {
        if (HandedOverAt is not null)
            return AlreadyGone;
        if (AsksLocked)
            return new Finding("Asks", "The split is agreed, so the grind order is locked. Withdraw the split first.");
        if (asks.Count(ask => ask.Kind == Trade.Grinding.AskKind.Rest) > 1)
            return new Finding("Asks", "Only one product can take the rest. Give the others a weight or a percent.");
        _asks.Clear();
        _asks.AddRange(asks);
        return null;
    }

    /// <summary>An order changed after a sheet may have been printed: the next sheet bears a new number.</summary>
    public void ReviseSheet() => SheetRevision++;

    public Finding? StartCutting(DateTime at)
    {
        if (HandedOverAt is not null)
            return AlreadyGone;
        if (!DetailsComplete)
            return new Finding("", "The details of this job are not complete. Finish the drop-off first.");
        CuttingStartedAt ??= at;
        return null;
    }

    public Finding? FinishCutting(DateTime at)
    {
        if (CuttingStartedAt is null)
            return new Finding("", "Cutting has not started. Start it first.");
        CuttingDoneAt ??= at;
        return null;
    }

    /// <summary>Back to the table: more meat turned up, or a weight must be mended.</summary>
    public Finding? ReopenCutting()
    {
        if (HandedOverAt is not null)
            return AlreadyGone;
        if (AsksLocked)
            return new Finding("", "The split is agreed. Withdraw it first.");
        CuttingDoneAt = null;
        return null;
    }

    /// <exception cref="InvalidOperationException">A split stands; withdraw it first.</exception>
    public void AgreeSplit(DateTime at) =>
        SplitAgreedAt = SplitAgreedAt is null ? at : throw new InvalidOperationException("A split of this job is agreed already.");

    public void WithdrawSplit() => (SplitAgreedAt, MadeAt) = (null, null);

    public void Made(DateTime at) => MadeAt ??= at;

    public void Boxed(DateTime at, int byId) => (BoxedAt, BoxedById) = (at, byId);

    /// <summary>A box was unpacked or one more is to come.</summary>
    public void BoxesReopened() => (BoxedAt, BoxedById) = (null, null);

    public void RenewLink() => LinkGeneration++;

    /// <exception cref="InvalidOperationException">It was handed over before; what was signed stays as it is.</exception>
    public void HandOver(DateTime at, int byId, string to)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(to);
        if (HandedOverAt is not null)
            throw new InvalidOperationException("This job was handed over before.");
        HandedOverAt = at;
        HandedOverById = byId;
        HandedOverTo = to.Trim();
    }
}
