namespace ProcessorDesk.Records;

/// <summary>What a hand in the shop may open. The numbers are stored.</summary>
public enum StaffRole
{
    Clerk = 1,
    Cutter = 2,
    Kitchen = 3,
    Manager = 4,
}
