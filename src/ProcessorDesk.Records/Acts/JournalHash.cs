using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace ProcessorDesk.Records;

/// <summary>SHA-256 over an entry and the hash of the one before it.</summary>
internal static class JournalHash
{
    public static string Of(string previous, DateTime at, int? byId, string station, string verb, string changes)
    {
        var text = string.Join('\u001f', previous, at.ToString("O", CultureInfo.InvariantCulture), byId, station, verb, changes);
        return Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
    }
}
