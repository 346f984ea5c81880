using System.Security.Cryptography;
using System.Text;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Hosting;

/// <summary>
/// The one-time code that makes the first manager of a new shop. It exists only while the shop has no manager, is made anew at
/// every start, stands on the console and nowhere else.
/// </summary>
public sealed class FirstManagerCode
{
    private const string Letters = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";

    /// <summary>Null once a manager is there.</summary>
    public string? Code { get; private set; }

    public void Prepare(RecordsContext records)
    {
        var hasManager = records.Staff.Any(staff => staff.Role == StaffRole.Manager && staff.RetiredAt == null);
        Code = hasManager || records.Shop.Any(shop => shop.IsDemo) ? null : RandomNumberGenerator.GetString(Letters, 10);
    }

    public bool Takes(string? typed) =>
        Code is not null
        && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(Code), Encoding.UTF8.GetBytes((typed ?? "").Trim().ToUpperInvariant()));

    /// <summary>After the first manager was saved the code is no more.</summary>
    public void Spend() => Code = null;
}
