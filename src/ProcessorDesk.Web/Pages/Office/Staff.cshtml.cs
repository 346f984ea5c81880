using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>Who works here, and who did.</summary>
public sealed class StaffModel(RecordsContext records) : StationPage
{
    public IReadOnlyList<Staff> AtWork { get; private set; } = [];

    public IReadOnlyList<Staff> Retired { get; private set; } = [];

    public void OnGet()
    {
        var all = records.Staff.AsNoTracking().OrderBy(staff => staff.Name).ToList();
        AtWork = [.. all.Where(staff => staff.RetiredAt is null)];
        Retired = [.. all.Where(staff => staff.RetiredAt is not null)];
    }
}
