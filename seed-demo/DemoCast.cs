using ProcessorDesk.Records;

namespace ProcessorDesk.SeedDemo;

/// <summary>The owners of the made-up season. No such people, phones or streets.</summary>
internal static class DemoCast
{
    public static TakenOwner Marta { get; } = New("Marta Ellingsworth", "0101", "12 Cattail Lane, Nettlefork", nameOnPacks: true);

    public static TakenOwner Joaquin { get; } = New("Joaquín Abernathy-Ruiz", "0102", "4 Gristmill Court, Nettlefork");

    public static TakenOwner Odette { get; } = New("Odette Varga", "0103", "88 Plank Road, East Nettlefork");

    public static TakenOwner Wendell { get; } = New("Wendell Krogh", "0104", "Farm 7, Stony Ridge");

    public static TakenOwner Priya { get; } = New("Priya Thornbury", "0105", "31 Larkspur Street, Nettlefork");

    public static TakenOwner Tobias { get; } = New("Tobias Fenn", "0106", "2 Weir Lane, Nettlefork");

    public static TakenOwner Hanne { get; } = New("Hanne Sørby", "0107", "19 Upper Ford, Stony Ridge");

    public static TakenOwner Luther { get; } = New("Luther Quade", "0108", "56 Plank Road, East Nettlefork");

    public static TakenOwner Imogen { get; } = New("Imogen Castellan", "0109", "1 Orchard Rise, Nettlefork");

    public static TakenOwner Bruno { get; } = New("Bruno Falk", "0110", "Farm 12, Stony Ridge");

    public static TakenOwner Sabine { get; } = New("Sabine Orr", "0111", "27 Larkspur Street, Nettlefork");

    public static TakenOwner Gus { get; } = New("Gus Merriwold", "0112", null);

    public static TakenOwner Leta { get; } = New("Leta Vandermolen", "0113", "9 Gristmill Court, Nettlefork", nameOnPacks: true);

    public static TakenOwner Nils { get; } = New("Nils Overgaard", "0114", "Farm 3, Stony Ridge");

    public static TakenOwner Tamsin { get; } = New("Tamsin Blackwood", "0115", "70 Upper Ford, Stony Ridge");

    public static TakenOwner Eudora { get; } = New("Eudora Pike", "0116", "15 Cattail Lane, Nettlefork");

    public static TakenOwner Ansel { get; } = New("Ansel Brightwater", "0121", "Farm 21, Stony Ridge");

    public static TakenOwner Coralie { get; } = New("Coralie Umber", "0122", "6 Weir Lane, Nettlefork");

    public static TakenOwner Rufus { get; } = New("Rufus Ketteridge", "0123", "Farm 18, Stony Ridge");

    public static TakenOwner Mabel { get; } = New("Mabel Oyelaran", "0124", "3 Orchard Rise, Nettlefork");

    public static TakenOwner Silas { get; } = New("Silas Penhallow", "0125", "41 Plank Road, East Nettlefork");

    public static TakenOwner Greta { get; } = New("Greta Lowther", "0126", "Farm 9, Stony Ridge");

    private static TakenOwner New(string name, string lastFour, string? address, bool nameOnPacks = false) =>
        new(null, name, $"(262) 555-{lastFour}", address, null, nameOnPacks);
}
