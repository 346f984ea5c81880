namespace ProcessorDesk.Records;

/// <summary>Who a hand is.</summary>
public static class StaffQueries
{
    public static bool IsManager(this RecordsContext records, Hand hand) =>
        records.Staff.Any(staff => staff.Id == hand.StaffId && staff.Role == StaffRole.Manager);
}
