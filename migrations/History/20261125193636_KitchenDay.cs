using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ProcessorDesk.Migrations.History
{
    /// <inheritdoc />
    public partial class KitchenDay : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<long>(
                name: "DayHoldsMg",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "SmallestFillMg",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "SmokehouseHoldsMg",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "DayHoldsMg",
                table: "Shop");

            migrationBuilder.DropColumn(
                name: "SmallestFillMg",
                table: "Shop");

            migrationBuilder.DropColumn(
                name: "SmokehouseHoldsMg",
                table: "Shop");
        }
    }
}
