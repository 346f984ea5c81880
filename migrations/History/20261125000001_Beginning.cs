using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ProcessorDesk.Migrations.History
{
    /// <inheritdoc />
    public partial class Beginning : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Animals",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Species = table.Column<int>(type: "INTEGER", nullable: false),
                    Sex = table.Column<int>(type: "INTEGER", nullable: false),
                    Tag = table.Column<string>(type: "TEXT", nullable: true),
                    TagKey = table.Column<string>(type: "TEXT", nullable: true),
                    LicenceNumber = table.Column<string>(type: "TEXT", nullable: true),
                    HarvestConfirmation = table.Column<string>(type: "TEXT", nullable: true),
                    HarvestedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    HarvestArea = table.Column<string>(type: "TEXT", nullable: true),
                    ArrivalState = table.Column<int>(type: "INTEGER", nullable: false),
                    ArrivedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Condition = table.Column<string>(type: "TEXT", nullable: true),
                    DiseaseTest = table.Column<int>(type: "INTEGER", nullable: false),
                    SampleNumber = table.Column<string>(type: "TEXT", nullable: true),
                    Laboratory = table.Column<string>(type: "TEXT", nullable: true),
                    ResultOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    CattleAge = table.Column<int>(type: "INTEGER", nullable: true),
                    Rail = table.Column<string>(type: "TEXT", nullable: true),
                    HungAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    SurfaceTemperatureHundredthsF = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Animals", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Counters",
                columns: table => new
                {
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Next = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Counters", x => x.Name);
                });

            migrationBuilder.CreateTable(
                name: "FormKeys",
                columns: table => new
                {
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Result = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FormKeys", x => x.Key);
                });

            migrationBuilder.CreateTable(
                name: "HoldRules",
                columns: table => new
                {
                    Reason = table.Column<int>(type: "INTEGER", nullable: false),
                    Act = table.Column<int>(type: "INTEGER", nullable: false),
                    Stops = table.Column<bool>(type: "INTEGER", nullable: false),
                    BuiltIn = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_HoldRules", x => new { x.Reason, x.Act });
                });

            migrationBuilder.CreateTable(
                name: "Journal",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: true),
                    Station = table.Column<string>(type: "TEXT", nullable: false),
                    Verb = table.Column<string>(type: "TEXT", nullable: false),
                    Changes = table.Column<string>(type: "TEXT", nullable: false),
                    PreviousHash = table.Column<string>(type: "TEXT", nullable: false),
                    Hash = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Journal", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Lugs",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    TareCheckedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RetiredAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    TareMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Lugs", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Owners",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false, collation: "NOCASE"),
                    Phone = table.Column<string>(type: "TEXT", nullable: false),
                    PhoneDigits = table.Column<string>(type: "TEXT", nullable: false),
                    PostalAddress = table.Column<string>(type: "TEXT", nullable: true),
                    Email = table.Column<string>(type: "TEXT", nullable: true),
                    NameOnPacks = table.Column<bool>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Owners", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "PriceLists",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    StartsOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    UsedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PriceLists", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Products",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    ProcessKind = table.Column<int>(type: "INTEGER", nullable: false),
                    Cured = table.Column<bool>(type: "INTEGER", nullable: false),
                    IsPlainGround = table.Column<bool>(type: "INTEGER", nullable: false),
                    RetiredAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Products", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Shop",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Address = table.Column<string>(type: "TEXT", nullable: true),
                    Phone = table.Column<string>(type: "TEXT", nullable: true),
                    TimeZone = table.Column<string>(type: "TEXT", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false),
                    TagRule = table.Column<int>(type: "INTEGER", nullable: false),
                    TaxWording = table.Column<string>(type: "TEXT", nullable: false),
                    Terms = table.Column<string>(type: "TEXT", nullable: true),
                    PromiseDays = table.Column<int>(type: "INTEGER", nullable: false),
                    UnclaimedAfterDays = table.Column<int>(type: "INTEGER", nullable: false),
                    PublicAddress = table.Column<string>(type: "TEXT", nullable: true),
                    PublicAddressTestedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    BenchDivisionStepMillionths = table.Column<int>(type: "INTEGER", nullable: false),
                    BenchDivisionUnit = table.Column<int>(type: "INTEGER", nullable: false),
                    CureDivisionStepMillionths = table.Column<int>(type: "INTEGER", nullable: false),
                    CureDivisionUnit = table.Column<int>(type: "INTEGER", nullable: false),
                    MixerCapacityMg = table.Column<long>(type: "INTEGER", nullable: false),
                    RailDivisionStepMillionths = table.Column<int>(type: "INTEGER", nullable: false),
                    RailDivisionUnit = table.Column<int>(type: "INTEGER", nullable: false),
                    TaxRatePpm = table.Column<int>(type: "INTEGER", nullable: false),
                    TolerancePpm = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Shop", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Staff",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Initials = table.Column<string>(type: "TEXT", nullable: false),
                    Role = table.Column<int>(type: "INTEGER", nullable: false),
                    PinHash = table.Column<string>(type: "TEXT", nullable: true),
                    RetiredAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Staff", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Tickets",
                columns: table => new
                {
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    TargetId = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    VoidedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    ReplacedByNumber = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Tickets", x => x.Number);
                });

            migrationBuilder.CreateTable(
                name: "ChecklistTicks",
                columns: table => new
                {
                    AnimalId = table.Column<int>(type: "INTEGER", nullable: false),
                    Item = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ChecklistTicks", x => new { x.AnimalId, x.Item });
                    table.ForeignKey(
                        name: "FK_ChecklistTicks_Animals_AnimalId",
                        column: x => x.AnimalId,
                        principalTable: "Animals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Jobs",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    OwnerId = table.Column<int>(type: "INTEGER", nullable: false),
                    TakenAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    TakenById = table.Column<int>(type: "INTEGER", nullable: false),
                    PriceListId = table.Column<int>(type: "INTEGER", nullable: false),
                    PromisedFor = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Pooling = table.Column<int>(type: "INTEGER", nullable: false),
                    Wrap = table.Column<int>(type: "INTEGER", nullable: false),
                    NoPork = table.Column<bool>(type: "INTEGER", nullable: false),
                    Notes = table.Column<string>(type: "TEXT", nullable: true),
                    DetailsComplete = table.Column<bool>(type: "INTEGER", nullable: false),
                    SheetRevision = table.Column<int>(type: "INTEGER", nullable: false),
                    CuttingStartedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    CuttingDoneAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    SplitAgreedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    BoxedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    BoxedById = table.Column<int>(type: "INTEGER", nullable: true),
                    HandedOverAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    HandedOverById = table.Column<int>(type: "INTEGER", nullable: true),
                    HandedOverTo = table.Column<string>(type: "TEXT", nullable: true),
                    LinkGeneration = table.Column<int>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Jobs", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Jobs_Owners_OwnerId",
                        column: x => x.OwnerId,
                        principalTable: "Owners",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Jobs_PriceLists_PriceListId",
                        column: x => x.PriceListId,
                        principalTable: "PriceLists",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FormulaVersions",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ProductId = table.Column<int>(type: "INTEGER", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    AddedFat = table.Column<string>(type: "TEXT", nullable: true),
                    AddedFatIsPork = table.Column<bool>(type: "INTEGER", nullable: false),
                    RestMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    LeanSharePpm = table.Column<int>(type: "INTEGER", nullable: false),
                    LossHighPpm = table.Column<int>(type: "INTEGER", nullable: false),
                    LossLowPpm = table.Column<int>(type: "INTEGER", nullable: false),
                    LossTypicalPpm = table.Column<int>(type: "INTEGER", nullable: false),
                    SmallestRunMg = table.Column<long>(type: "INTEGER", nullable: false),
                    StepMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FormulaVersions", x => x.Id);
                    table.ForeignKey(
                        name: "FK_FormulaVersions_Products_ProductId",
                        column: x => x.ProductId,
                        principalTable: "Products",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Prices",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    PriceListId = table.Column<int>(type: "INTEGER", nullable: false),
                    For = table.Column<int>(type: "INTEGER", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    Basis = table.Column<int>(type: "INTEGER", nullable: false),
                    Cents = table.Column<int>(type: "INTEGER", nullable: false),
                    Taxed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Species = table.Column<int>(type: "INTEGER", nullable: true),
                    ArrivalState = table.Column<int>(type: "INTEGER", nullable: true),
                    ProductId = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Prices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Prices_PriceLists_PriceListId",
                        column: x => x.PriceListId,
                        principalTable: "PriceLists",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_Prices_Products_ProductId",
                        column: x => x.ProductId,
                        principalTable: "Products",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "AgreedSplits",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    AgreedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    AgreedById = table.Column<int>(type: "INTEGER", nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    WithdrawnById = table.Column<int>(type: "INTEGER", nullable: true),
                    WithdrawnBecause = table.Column<string>(type: "TEXT", nullable: true),
                    LeanMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AgreedSplits", x => x.Id);
                    table.ForeignKey(
                        name: "FK_AgreedSplits_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CutOrderLines",
                columns: table => new
                {
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    Group = table.Column<string>(type: "TEXT", nullable: false),
                    Cut = table.Column<string>(type: "TEXT", nullable: false),
                    Detail = table.Column<string>(type: "TEXT", nullable: true),
                    PerPack = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CutOrderLines", x => new { x.JobId, x.Position });
                    table.ForeignKey(
                        name: "FK_CutOrderLines_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Fillings",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    LugId = table.Column<int>(type: "INTEGER", nullable: false),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    OpenedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    EmptiedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    TareMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Fillings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Fillings_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Fillings_Lugs_LugId",
                        column: x => x.LugId,
                        principalTable: "Lugs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "GrindOrders",
                columns: table => new
                {
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    ProductId = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    AmountMg = table.Column<long>(type: "INTEGER", nullable: false),
                    PercentPpm = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GrindOrders", x => new { x.JobId, x.Position });
                    table.ForeignKey(
                        name: "FK_GrindOrders_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_GrindOrders_Products_ProductId",
                        column: x => x.ProductId,
                        principalTable: "Products",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "HandOvers",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    To = table.Column<string>(type: "TEXT", nullable: false),
                    Owing = table.Column<bool>(type: "INTEGER", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_HandOvers", x => x.Id);
                    table.ForeignKey(
                        name: "FK_HandOvers_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Invoices",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    IssuedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    IssuedById = table.Column<int>(type: "INTEGER", nullable: false),
                    CreditsInvoiceId = table.Column<int>(type: "INTEGER", nullable: true),
                    ShopHeading = table.Column<string>(type: "TEXT", nullable: false),
                    OwnerHeading = table.Column<string>(type: "TEXT", nullable: false),
                    TaxWording = table.Column<string>(type: "TEXT", nullable: false),
                    Statement = table.Column<string>(type: "TEXT", nullable: false),
                    NetCents = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxCents = table.Column<long>(type: "INTEGER", nullable: false),
                    TotalCents = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Invoices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Invoices_Invoices_CreditsInvoiceId",
                        column: x => x.CreditsInvoiceId,
                        principalTable: "Invoices",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Invoices_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "JobPeople",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    Role = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Phone = table.Column<string>(type: "TEXT", nullable: true),
                    PostalAddress = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_JobPeople", x => x.Id);
                    table.ForeignKey(
                        name: "FK_JobPeople_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Payments",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    Method = table.Column<int>(type: "INTEGER", nullable: false),
                    IsDeposit = table.Column<bool>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false),
                    AmountCents = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Payments", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Payments_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Shares",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    AnimalId = table.Column<int>(type: "INTEGER", nullable: false),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    Numerator = table.Column<int>(type: "INTEGER", nullable: false),
                    Denominator = table.Column<int>(type: "INTEGER", nullable: false),
                    Portion = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Shares", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Shares_Animals_AnimalId",
                        column: x => x.AnimalId,
                        principalTable: "Animals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Shares_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Batches",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    ProductId = table.Column<int>(type: "INTEGER", nullable: false),
                    FormulaVersionId = table.Column<int>(type: "INTEGER", nullable: false),
                    Pooling = table.Column<int>(type: "INTEGER", nullable: false),
                    PlannedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PlannedById = table.Column<int>(type: "INTEGER", nullable: false),
                    MixedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    ReleasedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    ReleasedById = table.Column<int>(type: "INTEGER", nullable: true),
                    WrittenSupport = table.Column<string>(type: "TEXT", nullable: true),
                    EndedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    EndedById = table.Column<int>(type: "INTEGER", nullable: true),
                    EndedBecause = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Batches", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Batches_FormulaVersions_FormulaVersionId",
                        column: x => x.FormulaVersionId,
                        principalTable: "FormulaVersions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Batches_Products_ProductId",
                        column: x => x.ProductId,
                        principalTable: "Products",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FormulaIngredients",
                columns: table => new
                {
                    FormulaVersionId = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Basis = table.Column<int>(type: "INTEGER", nullable: false),
                    AmountMillionths = table.Column<long>(type: "INTEGER", nullable: false),
                    IsPork = table.Column<bool>(type: "INTEGER", nullable: false),
                    Allergens = table.Column<string>(type: "TEXT", nullable: true),
                    NitratePpm = table.Column<int>(type: "INTEGER", nullable: false),
                    NitritePpm = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FormulaIngredients", x => new { x.FormulaVersionId, x.Position });
                    table.ForeignKey(
                        name: "FK_FormulaIngredients_FormulaVersions_FormulaVersionId",
                        column: x => x.FormulaVersionId,
                        principalTable: "FormulaVersions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "GrindAllotments",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    AgreedSplitId = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    ProductId = table.Column<int>(type: "INTEGER", nullable: false),
                    FormulaVersionId = table.Column<int>(type: "INTEGER", nullable: false),
                    Reasons = table.Column<string>(type: "TEXT", nullable: false),
                    AddedFatMg = table.Column<long>(type: "INTEGER", nullable: false),
                    FinishedMg = table.Column<long>(type: "INTEGER", nullable: false),
                    FinishedHighMg = table.Column<long>(type: "INTEGER", nullable: false),
                    FinishedLowMg = table.Column<long>(type: "INTEGER", nullable: false),
                    GreenMg = table.Column<long>(type: "INTEGER", nullable: false),
                    LeanMg = table.Column<long>(type: "INTEGER", nullable: false),
                    MeatBlockMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GrindAllotments", x => x.Id);
                    table.ForeignKey(
                        name: "FK_GrindAllotments_AgreedSplits_AgreedSplitId",
                        column: x => x.AgreedSplitId,
                        principalTable: "AgreedSplits",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_GrindAllotments_FormulaVersions_FormulaVersionId",
                        column: x => x.FormulaVersionId,
                        principalTable: "FormulaVersions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_GrindAllotments_Products_ProductId",
                        column: x => x.ProductId,
                        principalTable: "Products",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FillingAnimal",
                columns: table => new
                {
                    FillingId = table.Column<int>(type: "INTEGER", nullable: false),
                    AnimalId = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FillingAnimal", x => new { x.FillingId, x.AnimalId });
                    table.ForeignKey(
                        name: "FK_FillingAnimal_Animals_AnimalId",
                        column: x => x.AnimalId,
                        principalTable: "Animals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_FillingAnimal_Fillings_FillingId",
                        column: x => x.FillingId,
                        principalTable: "Fillings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Parts",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    AnimalId = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    GivenAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    GivenById = table.Column<int>(type: "INTEGER", nullable: true),
                    GivenTo = table.Column<string>(type: "TEXT", nullable: true),
                    HandOverId = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Parts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Parts_Animals_AnimalId",
                        column: x => x.AnimalId,
                        principalTable: "Animals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Parts_HandOvers_HandOverId",
                        column: x => x.HandOverId,
                        principalTable: "HandOvers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "InvoiceLines",
                columns: table => new
                {
                    InvoiceId = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    For = table.Column<int>(type: "INTEGER", nullable: false),
                    OfId = table.Column<int>(type: "INTEGER", nullable: true),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    Quantity = table.Column<string>(type: "TEXT", nullable: false),
                    Rate = table.Column<string>(type: "TEXT", nullable: false),
                    Taxed = table.Column<bool>(type: "INTEGER", nullable: false),
                    AmountCents = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxCents = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_InvoiceLines", x => new { x.InvoiceId, x.Position });
                    table.ForeignKey(
                        name: "FK_InvoiceLines_Invoices_InvoiceId",
                        column: x => x.InvoiceId,
                        principalTable: "Invoices",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "BatchReadings",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    BatchId = table.Column<int>(type: "INTEGER", nullable: false),
                    Stage = table.Column<int>(type: "INTEGER", nullable: false),
                    Probe = table.Column<int>(type: "INTEGER", nullable: false),
                    AcidityHundredths = table.Column<int>(type: "INTEGER", nullable: true),
                    TakenAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false),
                    StruckAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    StruckById = table.Column<int>(type: "INTEGER", nullable: true),
                    StruckBecause = table.Column<string>(type: "TEXT", nullable: true),
                    TemperatureHundredthsF = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BatchReadings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_BatchReadings_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "BatchSteps",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    BatchId = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false),
                    UndoneAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    UndoneById = table.Column<int>(type: "INTEGER", nullable: true),
                    UndoneBecause = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BatchSteps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_BatchSteps_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Holds",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    AnimalId = table.Column<int>(type: "INTEGER", nullable: true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: true),
                    BatchId = table.Column<int>(type: "INTEGER", nullable: true),
                    Reason = table.Column<int>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    PlacedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PlacedById = table.Column<int>(type: "INTEGER", nullable: false),
                    ReleasedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    ReleasedById = table.Column<int>(type: "INTEGER", nullable: true),
                    ReleasedBecause = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Holds", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Holds_Animals_AnimalId",
                        column: x => x.AnimalId,
                        principalTable: "Animals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Holds_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Holds_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Loads",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    BatchId = table.Column<int>(type: "INTEGER", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    MixedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    MixedById = table.Column<int>(type: "INTEGER", nullable: true),
                    LowCureBecause = table.Column<string>(type: "TEXT", nullable: true),
                    AlreadyInBecause = table.Column<string>(type: "TEXT", nullable: true),
                    AddedFatMg = table.Column<long>(type: "INTEGER", nullable: false),
                    FatWeighedMg = table.Column<long>(type: "INTEGER", nullable: true),
                    GreenMg = table.Column<long>(type: "INTEGER", nullable: false),
                    LeanMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Loads", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Loads_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "BatchEntries",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    BatchId = table.Column<int>(type: "INTEGER", nullable: false),
                    AllotmentId = table.Column<int>(type: "INTEGER", nullable: false),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    LeftAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BatchEntries", x => x.Id);
                    table.ForeignKey(
                        name: "FK_BatchEntries_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BatchEntries_GrindAllotments_AllotmentId",
                        column: x => x.AllotmentId,
                        principalTable: "GrindAllotments",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BatchEntries_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LoadIngredients",
                columns: table => new
                {
                    LoadId = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    KeyedIn = table.Column<int>(type: "INTEGER", nullable: false),
                    NitratePpm = table.Column<int>(type: "INTEGER", nullable: false),
                    NitritePpm = table.Column<int>(type: "INTEGER", nullable: false),
                    PlannedMg = table.Column<long>(type: "INTEGER", nullable: false),
                    WeighedMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LoadIngredients", x => new { x.LoadId, x.Position });
                    table.ForeignKey(
                        name: "FK_LoadIngredients_Loads_LoadId",
                        column: x => x.LoadId,
                        principalTable: "Loads",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WeighIns",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Scale = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    Packs = table.Column<int>(type: "INTEGER", nullable: true),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false),
                    AnimalId = table.Column<int>(type: "INTEGER", nullable: true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: true),
                    FillingId = table.Column<int>(type: "INTEGER", nullable: true),
                    BatchId = table.Column<int>(type: "INTEGER", nullable: true),
                    LoadId = table.Column<int>(type: "INTEGER", nullable: true),
                    GrossMg = table.Column<long>(type: "INTEGER", nullable: false),
                    KeyedDivisionStepMillionths = table.Column<int>(type: "INTEGER", nullable: false),
                    KeyedDivisionUnit = table.Column<int>(type: "INTEGER", nullable: false),
                    NetMg = table.Column<long>(type: "INTEGER", nullable: false),
                    TareMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WeighIns", x => x.Id);
                    table.ForeignKey(
                        name: "FK_WeighIns_Animals_AnimalId",
                        column: x => x.AnimalId,
                        principalTable: "Animals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_WeighIns_Batches_BatchId",
                        column: x => x.BatchId,
                        principalTable: "Batches",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_WeighIns_Fillings_FillingId",
                        column: x => x.FillingId,
                        principalTable: "Fillings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_WeighIns_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_WeighIns_Loads_LoadId",
                        column: x => x.LoadId,
                        principalTable: "Loads",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Draws",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    LoadId = table.Column<int>(type: "INTEGER", nullable: false),
                    FillingId = table.Column<int>(type: "INTEGER", nullable: false),
                    EntryId = table.Column<int>(type: "INTEGER", nullable: true),
                    AlreadyInBecause = table.Column<string>(type: "TEXT", nullable: true),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false),
                    StruckAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    StruckById = table.Column<int>(type: "INTEGER", nullable: true),
                    StruckBecause = table.Column<string>(type: "TEXT", nullable: true),
                    KeyedDivisionStepMillionths = table.Column<int>(type: "INTEGER", nullable: false),
                    KeyedDivisionUnit = table.Column<int>(type: "INTEGER", nullable: false),
                    PlannedMg = table.Column<long>(type: "INTEGER", nullable: false),
                    WeighedMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Draws", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Draws_BatchEntries_EntryId",
                        column: x => x.EntryId,
                        principalTable: "BatchEntries",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Draws_Fillings_FillingId",
                        column: x => x.FillingId,
                        principalTable: "Fillings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Draws_Loads_LoadId",
                        column: x => x.LoadId,
                        principalTable: "Loads",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FinishedShares",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    EntryId = table.Column<int>(type: "INTEGER", nullable: false),
                    LoadId = table.Column<int>(type: "INTEGER", nullable: true),
                    WeightMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FinishedShares", x => x.Id);
                    table.ForeignKey(
                        name: "FK_FinishedShares_BatchEntries_EntryId",
                        column: x => x.EntryId,
                        principalTable: "BatchEntries",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_FinishedShares_Loads_LoadId",
                        column: x => x.LoadId,
                        principalTable: "Loads",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LoadParts",
                columns: table => new
                {
                    LoadId = table.Column<int>(type: "INTEGER", nullable: false),
                    EntryId = table.Column<int>(type: "INTEGER", nullable: false),
                    AddedFatMg = table.Column<long>(type: "INTEGER", nullable: false),
                    GreenMg = table.Column<long>(type: "INTEGER", nullable: false),
                    LeanMg = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LoadParts", x => new { x.LoadId, x.EntryId });
                    table.ForeignKey(
                        name: "FK_LoadParts_BatchEntries_EntryId",
                        column: x => x.EntryId,
                        principalTable: "BatchEntries",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LoadParts_Loads_LoadId",
                        column: x => x.LoadId,
                        principalTable: "Loads",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Boxes",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    WeighedId = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<string>(type: "TEXT", nullable: true),
                    PackedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PackedById = table.Column<int>(type: "INTEGER", nullable: false),
                    UnpackedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    UnpackedById = table.Column<int>(type: "INTEGER", nullable: true),
                    UnpackedBecause = table.Column<string>(type: "TEXT", nullable: true),
                    HandOverId = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Boxes", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Boxes_HandOvers_HandOverId",
                        column: x => x.HandOverId,
                        principalTable: "HandOvers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Boxes_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Boxes_WeighIns_WeighedId",
                        column: x => x.WeighedId,
                        principalTable: "WeighIns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Strikes",
                columns: table => new
                {
                    WeighInId = table.Column<int>(type: "INTEGER", nullable: false),
                    Because = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ById = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Strikes", x => x.WeighInId);
                    table.ForeignKey(
                        name: "FK_Strikes_WeighIns_WeighInId",
                        column: x => x.WeighInId,
                        principalTable: "WeighIns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "BoxContents",
                columns: table => new
                {
                    BoxId = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    AllotmentId = table.Column<int>(type: "INTEGER", nullable: true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Packs = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BoxContents", x => new { x.BoxId, x.Position });
                    table.ForeignKey(
                        name: "FK_BoxContents_Boxes_BoxId",
                        column: x => x.BoxId,
                        principalTable: "Boxes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BoxContents_GrindAllotments_AllotmentId",
                        column: x => x.AllotmentId,
                        principalTable: "GrindAllotments",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_AgreedSplits_Standing",
                table: "AgreedSplits",
                column: "JobId",
                unique: true,
                filter: "WithdrawnAt IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Animals_HungAt",
                table: "Animals",
                column: "HungAt");

            migrationBuilder.CreateIndex(
                name: "IX_Animals_TagKey",
                table: "Animals",
                column: "TagKey");

            migrationBuilder.CreateIndex(
                name: "IX_BatchEntries_BatchId",
                table: "BatchEntries",
                column: "BatchId");

            migrationBuilder.CreateIndex(
                name: "IX_BatchEntries_JobId",
                table: "BatchEntries",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_BatchEntries_Standing",
                table: "BatchEntries",
                column: "AllotmentId",
                unique: true,
                filter: "LeftAt IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_BatchReadings_BatchId_TakenAt",
                table: "BatchReadings",
                columns: new[] { "BatchId", "TakenAt" });

            migrationBuilder.CreateIndex(
                name: "IX_BatchSteps_BatchId",
                table: "BatchSteps",
                column: "BatchId");

            migrationBuilder.CreateIndex(
                name: "IX_BatchSteps_Standing",
                table: "BatchSteps",
                columns: new[] { "BatchId", "Kind" },
                unique: true,
                filter: "UndoneAt IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Batches_FormulaVersionId",
                table: "Batches",
                column: "FormulaVersionId");

            migrationBuilder.CreateIndex(
                name: "IX_Batches_Number",
                table: "Batches",
                column: "Number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Batches_Open",
                table: "Batches",
                column: "PlannedAt",
                filter: "ReleasedAt IS NULL AND EndedAt IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Batches_ProductId",
                table: "Batches",
                column: "ProductId");

            migrationBuilder.CreateIndex(
                name: "IX_Batches_ReleasedAt",
                table: "Batches",
                column: "ReleasedAt");

            migrationBuilder.CreateIndex(
                name: "IX_BoxContents_AllotmentId",
                table: "BoxContents",
                column: "AllotmentId");

            migrationBuilder.CreateIndex(
                name: "IX_Boxes_HandOverId",
                table: "Boxes",
                column: "HandOverId");

            migrationBuilder.CreateIndex(
                name: "IX_Boxes_JobId_Number",
                table: "Boxes",
                columns: new[] { "JobId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Boxes_WeighedId",
                table: "Boxes",
                column: "WeighedId");

            migrationBuilder.CreateIndex(
                name: "IX_Draws_EntryId",
                table: "Draws",
                column: "EntryId");

            migrationBuilder.CreateIndex(
                name: "IX_Draws_FillingId",
                table: "Draws",
                column: "FillingId");

            migrationBuilder.CreateIndex(
                name: "IX_Draws_LoadId",
                table: "Draws",
                column: "LoadId");

            migrationBuilder.CreateIndex(
                name: "IX_FillingAnimal_AnimalId",
                table: "FillingAnimal",
                column: "AnimalId");

            migrationBuilder.CreateIndex(
                name: "IX_Fillings_JobId",
                table: "Fillings",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_Fillings_Open",
                table: "Fillings",
                column: "LugId",
                unique: true,
                filter: "EmptiedAt IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_FinishedShares_EntryId",
                table: "FinishedShares",
                column: "EntryId");

            migrationBuilder.CreateIndex(
                name: "IX_FinishedShares_LoadId",
                table: "FinishedShares",
                column: "LoadId");

            migrationBuilder.CreateIndex(
                name: "IX_FormKeys_At",
                table: "FormKeys",
                column: "At");

            migrationBuilder.CreateIndex(
                name: "IX_FormulaVersions_ProductId_Number",
                table: "FormulaVersions",
                columns: new[] { "ProductId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_GrindAllotments_AgreedSplitId",
                table: "GrindAllotments",
                column: "AgreedSplitId");

            migrationBuilder.CreateIndex(
                name: "IX_GrindAllotments_FormulaVersionId",
                table: "GrindAllotments",
                column: "FormulaVersionId");

            migrationBuilder.CreateIndex(
                name: "IX_GrindAllotments_ProductId",
                table: "GrindAllotments",
                column: "ProductId");

            migrationBuilder.CreateIndex(
                name: "IX_GrindOrders_ProductId",
                table: "GrindOrders",
                column: "ProductId");

            migrationBuilder.CreateIndex(
                name: "IX_HandOvers_At",
                table: "HandOvers",
                column: "At");

            migrationBuilder.CreateIndex(
                name: "IX_HandOvers_JobId",
                table: "HandOvers",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_Holds_AnimalId",
                table: "Holds",
                column: "AnimalId");

            migrationBuilder.CreateIndex(
                name: "IX_Holds_BatchId",
                table: "Holds",
                column: "BatchId");

            migrationBuilder.CreateIndex(
                name: "IX_Holds_JobId",
                table: "Holds",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_Holds_Standing",
                table: "Holds",
                column: "PlacedAt",
                filter: "ReleasedAt IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Invoices_CreditsInvoiceId",
                table: "Invoices",
                column: "CreditsInvoiceId",
                unique: true,
                filter: "CreditsInvoiceId IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Invoices_JobId",
                table: "Invoices",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_Invoices_Number",
                table: "Invoices",
                column: "Number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_JobPeople_JobId_Role",
                table: "JobPeople",
                columns: new[] { "JobId", "Role" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_HandedOverAt",
                table: "Jobs",
                column: "HandedOverAt");

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_Number",
                table: "Jobs",
                column: "Number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_Open",
                table: "Jobs",
                column: "PromisedFor",
                filter: "HandedOverAt IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_OwnerId_TakenAt",
                table: "Jobs",
                columns: new[] { "OwnerId", "TakenAt" });

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_PriceListId",
                table: "Jobs",
                column: "PriceListId");

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_TakenAt",
                table: "Jobs",
                column: "TakenAt");

            migrationBuilder.CreateIndex(
                name: "IX_LoadParts_EntryId",
                table: "LoadParts",
                column: "EntryId");

            migrationBuilder.CreateIndex(
                name: "IX_Loads_BatchId_Number",
                table: "Loads",
                columns: new[] { "BatchId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Lugs_Number",
                table: "Lugs",
                column: "Number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Owners_Name",
                table: "Owners",
                column: "Name");

            migrationBuilder.CreateIndex(
                name: "IX_Owners_PhoneDigits",
                table: "Owners",
                column: "PhoneDigits");

            migrationBuilder.CreateIndex(
                name: "IX_Parts_AnimalId",
                table: "Parts",
                column: "AnimalId");

            migrationBuilder.CreateIndex(
                name: "IX_Parts_HandOverId",
                table: "Parts",
                column: "HandOverId");

            migrationBuilder.CreateIndex(
                name: "IX_Payments_JobId",
                table: "Payments",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_PriceLists_StartsOn",
                table: "PriceLists",
                column: "StartsOn");

            migrationBuilder.CreateIndex(
                name: "IX_Prices_PriceListId",
                table: "Prices",
                column: "PriceListId");

            migrationBuilder.CreateIndex(
                name: "IX_Prices_ProductId",
                table: "Prices",
                column: "ProductId");

            migrationBuilder.CreateIndex(
                name: "IX_Products_Name",
                table: "Products",
                column: "Name",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Products_PlainGround",
                table: "Products",
                column: "IsPlainGround",
                unique: true,
                filter: "IsPlainGround");

            migrationBuilder.CreateIndex(
                name: "IX_Shares_AnimalId_JobId",
                table: "Shares",
                columns: new[] { "AnimalId", "JobId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Shares_JobId",
                table: "Shares",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_Staff_Initials",
                table: "Staff",
                column: "Initials",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Strikes_At",
                table: "Strikes",
                column: "At");

            migrationBuilder.CreateIndex(
                name: "IX_Tickets_Kind_TargetId",
                table: "Tickets",
                columns: new[] { "Kind", "TargetId" });

            migrationBuilder.CreateIndex(
                name: "IX_WeighIns_AnimalId",
                table: "WeighIns",
                column: "AnimalId");

            migrationBuilder.CreateIndex(
                name: "IX_WeighIns_BatchId",
                table: "WeighIns",
                column: "BatchId");

            migrationBuilder.CreateIndex(
                name: "IX_WeighIns_FillingId",
                table: "WeighIns",
                column: "FillingId");

            migrationBuilder.CreateIndex(
                name: "IX_WeighIns_JobId",
                table: "WeighIns",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_WeighIns_LoadId",
                table: "WeighIns",
                column: "LoadId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "BatchReadings");

            migrationBuilder.DropTable(
                name: "BatchSteps");

            migrationBuilder.DropTable(
                name: "BoxContents");

            migrationBuilder.DropTable(
                name: "ChecklistTicks");

            migrationBuilder.DropTable(
                name: "Counters");

            migrationBuilder.DropTable(
                name: "CutOrderLines");

            migrationBuilder.DropTable(
                name: "Draws");

            migrationBuilder.DropTable(
                name: "FillingAnimal");

            migrationBuilder.DropTable(
                name: "FinishedShares");

            migrationBuilder.DropTable(
                name: "FormKeys");

            migrationBuilder.DropTable(
                name: "FormulaIngredients");

            migrationBuilder.DropTable(
                name: "GrindOrders");

            migrationBuilder.DropTable(
                name: "HoldRules");

            migrationBuilder.DropTable(
                name: "Holds");

            migrationBuilder.DropTable(
                name: "InvoiceLines");

            migrationBuilder.DropTable(
                name: "JobPeople");

            migrationBuilder.DropTable(
                name: "Journal");

            migrationBuilder.DropTable(
                name: "LoadIngredients");

            migrationBuilder.DropTable(
                name: "LoadParts");

            migrationBuilder.DropTable(
                name: "Parts");

            migrationBuilder.DropTable(
                name: "Payments");

            migrationBuilder.DropTable(
                name: "Prices");

            migrationBuilder.DropTable(
                name: "Shares");

            migrationBuilder.DropTable(
                name: "Shop");

            migrationBuilder.DropTable(
                name: "Staff");

            migrationBuilder.DropTable(
                name: "Strikes");

            migrationBuilder.DropTable(
                name: "Tickets");

            migrationBuilder.DropTable(
                name: "Boxes");

            migrationBuilder.DropTable(
                name: "Invoices");

            migrationBuilder.DropTable(
                name: "BatchEntries");

            migrationBuilder.DropTable(
                name: "HandOvers");

            migrationBuilder.DropTable(
                name: "WeighIns");

            migrationBuilder.DropTable(
                name: "GrindAllotments");

            migrationBuilder.DropTable(
                name: "Animals");

            migrationBuilder.DropTable(
                name: "Fillings");

            migrationBuilder.DropTable(
                name: "Loads");

            migrationBuilder.DropTable(
                name: "AgreedSplits");

            migrationBuilder.DropTable(
                name: "Lugs");

            migrationBuilder.DropTable(
                name: "Batches");

            migrationBuilder.DropTable(
                name: "Jobs");

            migrationBuilder.DropTable(
                name: "FormulaVersions");

            migrationBuilder.DropTable(
                name: "Owners");

            migrationBuilder.DropTable(
                name: "PriceLists");

            migrationBuilder.DropTable(
                name: "Products");
        }
    }
}
