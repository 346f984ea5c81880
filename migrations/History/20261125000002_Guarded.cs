using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ProcessorDesk.Migrations.History
{
    /// <inheritdoc />
    public partial class Guarded : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            Guards.Lay(migrationBuilder);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            throw new System.NotSupportedException("The way back is the copy made before the upgrade.");
        }
    }
}
