using Microsoft.EntityFrameworkCore.Design;
using ProcessorDesk.Records;

namespace ProcessorDesk.Migrations;

/// <summary>Lets the migration tool build the model without the app.</summary>
public sealed class DesignTime : IDesignTimeDbContextFactory<RecordsContext>
{
    public RecordsContext CreateDbContext(string[] args) => RecordsFile.Open("design-time.db");
}
