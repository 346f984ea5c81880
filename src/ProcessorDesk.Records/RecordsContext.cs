using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>What the shop remembers. Pages read through projections; writes go through <see cref="Verbs"/>.</summary>
public sealed class RecordsContext(DbContextOptions<RecordsContext> options) : DbContext(options)
{
    public DbSet<ShopSettings> Shop => Set<ShopSettings>();

    public DbSet<Staff> Staff => Set<Staff>();

    public DbSet<Owner> Owners => Set<Owner>();

    public DbSet<Job> Jobs => Set<Job>();

    public DbSet<JobPerson> JobPeople => Set<JobPerson>();

    public DbSet<CutOrderLine> CutOrderLines => Set<CutOrderLine>();

    public DbSet<Animal> Animals => Set<Animal>();

    public DbSet<Share> Shares => Set<Share>();

    public DbSet<Part> Parts => Set<Part>();

    public DbSet<Hold> Holds => Set<Hold>();

    public DbSet<HoldRule> HoldRules => Set<HoldRule>();

    public DbSet<ChecklistTick> ChecklistTicks => Set<ChecklistTick>();

    public DbSet<Lug> Lugs => Set<Lug>();

    public DbSet<Filling> Fillings => Set<Filling>();

    public DbSet<WeighIn> WeighIns => Set<WeighIn>();

    public DbSet<Strike> Strikes => Set<Strike>();

    public DbSet<Product> Products => Set<Product>();

    public DbSet<FormulaVersion> FormulaVersions => Set<FormulaVersion>();

    public DbSet<FormulaIngredient> FormulaIngredients => Set<FormulaIngredient>();

    public DbSet<Ingredient> Ingredients => Set<Ingredient>();

    public DbSet<IngredientLot> IngredientLots => Set<IngredientLot>();

    public DbSet<LotUse> LotUses => Set<LotUse>();

    public DbSet<GrindOrder> GrindOrders => Set<GrindOrder>();

    public DbSet<AgreedSplit> AgreedSplits => Set<AgreedSplit>();

    public DbSet<GrindAllotment> GrindAllotments => Set<GrindAllotment>();

    public DbSet<Batch> Batches => Set<Batch>();

    public DbSet<BatchEntry> BatchEntries => Set<BatchEntry>();

    public DbSet<Load> Loads => Set<Load>();

    public DbSet<LoadPart> LoadParts => Set<LoadPart>();

    public DbSet<LoadIngredient> LoadIngredients => Set<LoadIngredient>();

    public DbSet<Draw> Draws => Set<Draw>();

    public DbSet<BatchStep> BatchSteps => Set<BatchStep>();

    public DbSet<BatchReading> BatchReadings => Set<BatchReading>();

    public DbSet<StuffedPieces> StuffedPieces => Set<StuffedPieces>();

    public DbSet<BatchRules> BatchRules => Set<BatchRules>();

    public DbSet<Disposition> Dispositions => Set<Disposition>();

    public DbSet<FinishedShare> FinishedShares => Set<FinishedShare>();

    public DbSet<Box> Boxes => Set<Box>();

    public DbSet<BoxContent> BoxContents => Set<BoxContent>();

    public DbSet<HandOver> HandOvers => Set<HandOver>();

    public DbSet<OwnerCall> OwnerCalls => Set<OwnerCall>();

    public DbSet<Ticket> Tickets => Set<Ticket>();

    public DbSet<PriceList> PriceLists => Set<PriceList>();

    public DbSet<Price> Prices => Set<Price>();

    public DbSet<Invoice> Invoices => Set<Invoice>();

    public DbSet<InvoiceLine> InvoiceLines => Set<InvoiceLine>();

    public DbSet<Payment> Payments => Set<Payment>();

    public DbSet<Counter> Counters => Set<Counter>();

    public DbSet<FormKey> FormKeys => Set<FormKey>();

    public DbSet<JournalEntry> Journal => Set<JournalEntry>();

    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        Versions.Raise(ChangeTracker);
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        Versions.Raise(ChangeTracker);
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        MeasureColumns.Conventions(configurationBuilder);

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        OwnerTables.Map(modelBuilder);
        JobTables.Map(modelBuilder);
        AnimalTables.Map(modelBuilder);
        WeighingTables.Map(modelBuilder);
        LarderTables.Map(modelBuilder);
        GrindTables.Map(modelBuilder);
        KitchenTables.Map(modelBuilder);
        ProcessTables.Map(modelBuilder);
        BoxTables.Map(modelBuilder);
        TracingTables.Map(modelBuilder);
        MoneyTables.Map(modelBuilder);
        ShopTables.Map(modelBuilder);
        MeasureColumns.NameColumns(modelBuilder);
    }
}
