using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ProcessorDesk.Migrations.History
{
    /// <inheritdoc />
    public partial class SecondWeighing : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "AgainById",
                table: "LoadIngredients",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "AgainKeyedIn",
                table: "LoadIngredients",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "WeighedAgainMg",
                table: "LoadIngredients",
                type: "INTEGER",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            throw new System.NotSupportedException("The way back is the copy made before the upgrade.");
        }
    }
}
