using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ProcessorDesk.Migrations.History
{
    /// <inheritdoc />
    public partial class Dispositions : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "ChillingGapMinutes",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: 60);

            migrationBuilder.AddColumn<int>(
                name: "CookingGapMinutes",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: 15);

            migrationBuilder.AddColumn<string>(
                name: "CoolingOption",
                table: "Shop",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "ThermometerAccuracyHundredthsF",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<int>(
                name: "Cooking",
                table: "Products",
                type: "INTEGER",
                nullable: false,
                defaultValue: 1);

            migrationBuilder.AddColumn<string>(
                name: "CookingSupport",
                table: "Products",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "DryingLossPpm",
                table: "Products",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Pieces",
                table: "FinishedShares",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Programme",
                table: "Batches",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "BatchRules",
                columns: table => new
                {
                    BatchId = table.Column<int>(type: "INTEGER", nullable: false),
                    Cooking = table.Column<int>(type: "INTEGER", nullable: false),
                    CookingSupport = table.Column<string>(type: "TEXT", nullable: true),
                    CoolingOption = table.Column<string>(type: "TEXT", nullable: true),
                    CookingGapMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    ChillingGapMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    AccuracyHundredthsF = table.Column<int>(type: "INTEGER", nullable: false),
                    DryingLossPpm = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BatchRules", x => x.BatchId);
                    table.ForeignKey(
                        name: "FK_BatchRules_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Dispositions",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    BatchId = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Stage = table.Column<int>(type: "INTEGER", nullable: true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    On = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Reference = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Dispositions", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Dispositions_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StuffedPieces",
                columns: table => new
                {
                    StepId = table.Column<int>(type: "INTEGER", nullable: false),
                    LoadId = table.Column<int>(type: "INTEGER", nullable: false),
                    Pieces = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StuffedPieces", x => new { x.StepId, x.LoadId });
                    table.ForeignKey(
                        name: "FK_StuffedPieces_BatchSteps_StepId",
                        column: x => x.StepId,
                        principalTable: "BatchSteps",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StuffedPieces_Loads_LoadId",
                        column: x => x.LoadId,
                        principalTable: "Loads",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Dispositions_BatchId",
                table: "Dispositions",
                column: "BatchId");

            migrationBuilder.CreateIndex(
                name: "IX_StuffedPieces_LoadId",
                table: "StuffedPieces",
                column: "LoadId");

            TableGuards.Freeze(migrationBuilder, "BatchRules", "Dispositions", "StuffedPieces");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            throw new System.NotSupportedException("The way back is the copy made before the upgrade.");
        }
    }
}
