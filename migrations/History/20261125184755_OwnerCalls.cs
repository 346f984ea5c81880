using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ProcessorDesk.Migrations.History
{
    /// <inheritdoc />
    public partial class OwnerCalls : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "OwnerCalls",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    About = table.Column<int>(type: "INTEGER", nullable: false),
                    AboutId = table.Column<int>(type: "INTEGER", nullable: false),
                    Outcome = table.Column<int>(type: "INTEGER", nullable: false),
                    Words = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OwnerCalls", x => x.Id);
                    table.ForeignKey(
                        name: "FK_OwnerCalls_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Fillings_LugId",
                table: "Fillings",
                column: "LugId");

            migrationBuilder.CreateIndex(
                name: "IX_OwnerCalls_JobId_About_AboutId",
                table: "OwnerCalls",
                columns: new[] { "JobId", "About", "AboutId" });

            TableGuards.Freeze(migrationBuilder, "OwnerCalls");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            throw new NotSupportedException("The way back is the copy made before the upgrade.");
        }
    }
}
