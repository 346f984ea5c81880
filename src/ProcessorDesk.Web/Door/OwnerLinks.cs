using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Door;

/// <summary>
/// Links to owners' pages: "1042-7K2M9QXA4RT0BC3D", the job's number and 80 bits that only this shop's key can make for it and for
/// the job's link generation. No link is stored; raising the generation kills the ones given out.
/// </summary>
public sealed class OwnerLinks(OwnerKey key)
{
    private const int ProofBytes = 10;

    public string Of(int jobNumber, int generation) =>
        FormattableString.Invariant($"{jobNumber}-") + Base32Text.EncodeBytes(key.Prove(FormattableString.Invariant($"owner link {jobNumber} {generation}")).AsSpan(0, ProofBytes));

    /// <summary>The whole address to give out; null while no public address was tried and led here.</summary>
    public string? Address(ShopSettings shop, int jobNumber, int generation) =>
        shop.OpenAddress is { } open ? $"{open}{Folder}/{Of(jobNumber, generation)}" : null;

    /// <summary>The job a link speaks of, whether or not it is right; null where it speaks of none.</summary>
    public static int? JobNumberIn(string? link) =>
        link?.Split('-', 2) is [var number, _] && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var read) ? read : null;

    /// <summary>Whether a link is the one of this job. It takes as long for a wrong one as for a right one; small letters, i, l and o are read over.</summary>
    public bool Fits(string? link, int jobNumber, int generation) =>
        CryptographicOperations.FixedTimeEquals(Plain(link), Plain(Of(jobNumber, generation)));

    /// <summary>Where owners' pages are, below the public address.</summary>
    public const string Folder = "/Owner";

    private static byte[] Plain(string? link) => Encoding.UTF8.GetBytes(Base32Text.Canonical(link) ?? "");
}
