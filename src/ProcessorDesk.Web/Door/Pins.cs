using System.Globalization;
using System.Security.Cryptography;

namespace ProcessorDesk.Web.Door;

/// <summary>PINs: four to eight figures, kept only as a salted hash that is slow on purpose.</summary>
public static class Pins
{
    private const int Rounds = 210_000;
    private const int SaltBytes = 16;
    private const int HashBytes = 32;

    /// <summary>What is wrong with a new PIN, in words; null where it will do.</summary>
    public static string? Problem(string? pin) => pin switch
    {
        null or "" => "Type a PIN of four to eight figures.",
        { Length: < 4 or > 8 } => "A PIN has four to eight figures.",
        _ when !pin.All(char.IsAsciiDigit) => "A PIN has figures only.",
        _ when pin.Distinct().Count() == 1 => "One figure repeated is guessed first. Choose another PIN.",
        _ => null,
    };

    public static string Hash(string pin)
    {
        var salt = RandomNumberGenerator.GetBytes(SaltBytes);
        return string.Create(CultureInfo.InvariantCulture, $"{Rounds}.{Convert.ToBase64String(salt)}.{Convert.ToBase64String(Slow(pin, salt, Rounds))}");
    }

    public static bool Fits(string? pin, string? hash)
    {
        if (pin is null || hash?.Split('.') is not [var rounds, var salt, var kept]) return false;
        var tried = Slow(pin, Convert.FromBase64String(salt), int.Parse(rounds, CultureInfo.InvariantCulture));
        return CryptographicOperations.FixedTimeEquals(tried, Convert.FromBase64String(kept));
    }

    private static byte[] Slow(string pin, byte[] salt, int rounds) =>
        Rfc2898DeriveBytes.Pbkdf2(pin, salt, rounds, HashAlgorithmName.SHA256, HashBytes);
}
