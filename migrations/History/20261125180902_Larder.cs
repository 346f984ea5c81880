using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ProcessorDesk.Migrations.History
{
    /// <inheritdoc />
    public partial class Larder : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<bool>(
                name: "MoreAllergens",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<int>(
                name: "Class",
                table: "Products",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "AddedFatFatPpm",
                table: "FormulaVersions",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Casing",
                table: "FormulaVersions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "CasingHoldsMg",
                table: "FormulaVersions",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "CasingIsPork",
                table: "FormulaVersions",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<int>(
                name: "ContainsBeside",
                table: "FormulaVersions",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<int>(
                name: "LeanFatPpm",
                table: "FormulaVersions",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Contains",
                table: "FormulaIngredients",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<int>(
                name: "FatPpm",
                table: "FormulaIngredients",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<bool>(
                name: "InMeatBlock",
                table: "FormulaIngredients",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<int>(
                name: "Kind",
                table: "FormulaIngredients",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "SaltPpm",
                table: "FormulaIngredients",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<int>(
                name: "WaterPpm",
                table: "FormulaIngredients",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<bool>(
                name: "InMeatBlock",
                table: "LoadIngredients",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateTable(
                name: "Ingredients",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    InMeatBlock = table.Column<bool>(type: "INTEGER", nullable: false),
                    IsPork = table.Column<bool>(type: "INTEGER", nullable: false),
                    FatSource = table.Column<string>(type: "TEXT", nullable: true),
                    Contains = table.Column<int>(type: "INTEGER", nullable: false),
                    LeastPieces = table.Column<int>(type: "INTEGER", nullable: false),
                    BoughtIn = table.Column<int>(type: "INTEGER", nullable: false),
                    RetiredAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    CostCents = table.Column<long>(type: "INTEGER", nullable: true),
                    FatPpm = table.Column<int>(type: "INTEGER", nullable: false),
                    LeastOnHandMg = table.Column<long>(type: "INTEGER", nullable: false),
                    NitratePpm = table.Column<int>(type: "INTEGER", nullable: false),
                    NitritePpm = table.Column<int>(type: "INTEGER", nullable: false),
                    SaltPpm = table.Column<int>(type: "INTEGER", nullable: false),
                    WaterPpm = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Ingredients", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "IngredientLots",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    IngredientId = table.Column<int>(type: "INTEGER", nullable: false),
                    Supplier = table.Column<string>(type: "TEXT", nullable: true),
                    LotCode = table.Column<string>(type: "TEXT", nullable: false),
                    Establishment = table.Column<string>(type: "TEXT", nullable: true),
                    ReceivedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Pieces = table.Column<int>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false),
                    UsedUpAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    UsedUpById = table.Column<int>(type: "INTEGER", nullable: true),
                    StruckAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    StruckById = table.Column<int>(type: "INTEGER", nullable: true),
                    StruckBecause = table.Column<string>(type: "TEXT", nullable: true),
                    AmountMg = table.Column<long>(type: "INTEGER", nullable: false),
                    NitratePpm = table.Column<int>(type: "INTEGER", nullable: false),
                    NitritePpm = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_IngredientLots", x => x.Id);
                    table.ForeignKey(
                        name: "FK_IngredientLots_Ingredients_IngredientId",
                        column: x => x.IngredientId,
                        principalTable: "Ingredients",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LotUses",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    LoadId = table.Column<int>(type: "INTEGER", nullable: false),
                    LotId = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: true),
                    Pieces = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false),
                    StruckAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    StruckById = table.Column<int>(type: "INTEGER", nullable: true),
                    StruckBecause = table.Column<string>(type: "TEXT", nullable: true),
                    AmountMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LotUses", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LotUses_IngredientLots_LotId",
                        column: x => x.LotId,
                        principalTable: "IngredientLots",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LotUses_Loads_LoadId",
                        column: x => x.LoadId,
                        principalTable: "Loads",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            // By hand: asked for by the framework, a reference rebuilds the whole table and drops its triggers.
            foreach (var (table, column) in ((string, string)[])[("FormulaVersions", "AddedFatIngredientId"), ("FormulaVersions", "CasingIngredientId"), ("FormulaIngredients", "IngredientId")])
            {
                migrationBuilder.Sql(
                    $"""
                    ALTER TABLE "{table}" ADD COLUMN "{column}" INTEGER NULL
                    CONSTRAINT "FK_{table}_Ingredients_{column}" REFERENCES "Ingredients" ("Id") ON DELETE RESTRICT;
                    """);
            }

            migrationBuilder.CreateIndex(
                name: "IX_FormulaVersions_AddedFatIngredientId",
                table: "FormulaVersions",
                column: "AddedFatIngredientId");

            migrationBuilder.CreateIndex(
                name: "IX_FormulaVersions_CasingIngredientId",
                table: "FormulaVersions",
                column: "CasingIngredientId");

            migrationBuilder.CreateIndex(
                name: "IX_FormulaIngredients_IngredientId",
                table: "FormulaIngredients",
                column: "IngredientId");

            migrationBuilder.CreateIndex(
                name: "IX_IngredientLots_IngredientId_ReceivedOn",
                table: "IngredientLots",
                columns: new[] { "IngredientId", "ReceivedOn" });

            migrationBuilder.CreateIndex(
                name: "IX_IngredientLots_LotCode",
                table: "IngredientLots",
                column: "LotCode");

            migrationBuilder.CreateIndex(
                name: "IX_IngredientLots_Open",
                table: "IngredientLots",
                columns: new[] { "IngredientId", "ReceivedOn" },
                filter: "UsedUpAt IS NULL AND StruckAt IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_IngredientLots_ReceivedOn",
                table: "IngredientLots",
                column: "ReceivedOn");

            migrationBuilder.CreateIndex(
                name: "IX_Ingredients_Name",
                table: "Ingredients",
                column: "Name",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LotUses_LoadId",
                table: "LotUses",
                column: "LoadId");

            migrationBuilder.CreateIndex(
                name: "IX_LotUses_LotId",
                table: "LotUses",
                column: "LotId");

            TableGuards.Keep(migrationBuilder, "Ingredients", "IngredientLots", "LotUses");
            TableGuards.Settle(migrationBuilder, "IngredientLots", "IngredientId, Supplier, LotCode, Establishment, ReceivedOn, AmountMg, Pieces, NitritePpm, NitratePpm, Note, At, ById");
            TableGuards.Settle(migrationBuilder, "LotUses", "LoadId, LotId, Position, AmountMg, Pieces, At, ById");
            TableGuards.Close(migrationBuilder, "IngredientLots", "StruckAt");
            TableGuards.Close(migrationBuilder, "LotUses", "StruckAt");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            throw new System.NotSupportedException("The way back is the copy made before the upgrade.");
        }
    }
}
