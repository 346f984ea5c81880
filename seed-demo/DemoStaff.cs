using ProcessorDesk.Records;

namespace ProcessorDesk.SeedDemo;

/// <summary>The made-up shop's hands. None has a PIN: in the demo anyone signs in by a tap.</summary>
internal static class DemoStaff
{
    private static readonly (string Name, string Initials, StaffRole Role)[] s_hands =
    [
        ("Nell Harrowgate", "NH", StaffRole.Manager),
        ("Ivo Pettigrew", "IP", StaffRole.Clerk),
        ("Dalia Munk", "DM", StaffRole.Clerk),
        ("Oskar Trelawney", "OT", StaffRole.Cutter),
        ("Fern Adeyo", "FA", StaffRole.Cutter),
        ("Basil Quint", "BQ", StaffRole.Kitchen),
    ];

    public static void Hire(RecordsContext records) =>
        records.Staff.AddRange(s_hands.Select(hand => new Staff(hand.Name, hand.Initials, hand.Role)));

    /// <summary>Whose number is whose, by their initials.</summary>
    public static IReadOnlyDictionary<string, int> Ids(RecordsContext records) => records.Staff.ToDictionary(staff => staff.Initials, staff => staff.Id);
}
