using System.Globalization;
using System.Numerics;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Door;

public sealed class OwnerLinksTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    private OwnerLinks Links => shop.Services.GetRequiredService<OwnerLinks>();

    private string KeyFile => Path.Combine(shop.Folder, "keys", "owner-links.key");

    /// <summary>HMAC-SHA256 (RFC 2104, FIPS 180-4) with the key file's bytes; its first ten bytes in base 32, worked here by division.</summary>
    [Fact]
    public void A_link_is_the_jobs_number_and_eighty_bits_of_a_keyed_hash()
    {
        var hash = HMACSHA256.HashData(File.ReadAllBytes(KeyFile), Encoding.ASCII.GetBytes("owner link 1042 3"));
        var number = new BigInteger(hash.AsSpan(0, 10), isUnsigned: true, isBigEndian: true);
        var digits = "";
        for (var i = 0; i < 16; i++, number /= 32)
            digits = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"[(int)(number % 32)] + digits;

        Assert.Equal($"1042-{digits}", Links.Of(1042, 3));
    }

    [Fact]
    public void The_key_is_random_and_kept_from_others_on_the_machine()
    {
        Assert.Equal(32, File.ReadAllBytes(KeyFile).Length);
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(KeyFile));
        using var other = new ShopUnderTest();
        Assert.NotEqual(File.ReadAllBytes(KeyFile), File.ReadAllBytes(Path.Combine(other.Folder, "keys", "owner-links.key")));
    }

    [Fact]
    public void The_key_outlives_a_restart()
    {
        var again = new OwnerLinks(new OwnerKey(KeyFile));

        Assert.Equal(Links.Of(1042, 1), again.Of(1042, 1));
    }

    [Fact]
    public void A_damaged_key_is_never_replaced_in_silence()
    {
        var file = Path.Combine(shop.Folder, "keys", "half.key");
        File.WriteAllBytes(file, new byte[7]);

        var fault = Assert.Throws<InvalidDataException>(() => new OwnerKey(file).Prepare());

        Assert.Contains("Put it back from a copy", fault.Message, StringComparison.Ordinal);
        Assert.Equal(7, File.ReadAllBytes(file).Length);
    }

    [Fact]
    public void No_altered_link_fits()
    {
        var link = Links.Of(1042, 1);

        Assert.True(Links.Fits(link, 1042, 1));
        foreach (var i in Enumerable.Range(0, link.Length).Where(i => link[i] != '-'))
            foreach (var other in "0123456789ABCDEFGHJKMNPQRSTVWXYZ".Where(other => other != link[i]))
                Assert.False(Links.Fits(link[..i] + other + link[(i + 1)..], 1042, 1));
        Assert.False(Links.Fits(link[..^1], 1042, 1));
        Assert.False(Links.Fits(link + "0", 1042, 1));
        Assert.False(Links.Fits(null, 1042, 1));
        Assert.False(Links.Fits(link, 1042, 2));
        Assert.False(Links.Fits(Links.Of(1043, 1), 1042, 1));
    }

    [Fact]
    public void A_link_is_read_as_people_type_it()
    {
        var link = Links.Of(1042, 1);

        Assert.True(Links.Fits(link.ToLowerInvariant(), 1042, 1));
        Assert.True(Links.Fits(link.Replace('1', 'l').Replace('0', 'o'), 1042, 1));
        Assert.Equal(1042, OwnerLinks.JobNumberIn(link));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("1042")]
    [InlineData("-ABCD")]
    [InlineData("+7-ABCD")]
    [InlineData("99999999999999999999-ABCD")]
    public void What_speaks_of_no_job_is_no_link(string? link) => Assert.Null(OwnerLinks.JobNumberIn(link));

    /// <summary>A QR symbol's alphanumeric mode holds these 45 signs alone (ISO/IEC 18004, table 5).</summary>
    [Fact]
    public void A_link_in_capitals_stays_in_the_short_mode_of_a_QR_symbol() =>
        Assert.Matches("^[0-9A-Z $%*+./:-]+$", $"https://desk.example.com/Owner/{Links.Of(int.MaxValue, 1)}".ToUpper(CultureInfo.InvariantCulture));
}
