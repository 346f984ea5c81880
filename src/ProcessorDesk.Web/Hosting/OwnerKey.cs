using System.Security.Cryptography;
using System.Text;

namespace ProcessorDesk.Web.Hosting;

/// <summary>
/// The shop's secret that owners' links are derived from: 32 random bytes in a file among the data folder's keys, made once. A copy of the
/// database alone opens no link; where this file is lost, every link given out is dead and has to be printed anew.
/// </summary>
public sealed class OwnerKey
{
    private const int Length = 32;
    private readonly string _file;
    private readonly Lazy<byte[]> _key;

    public OwnerKey(string file)
    {
        _file = file;
        _key = new Lazy<byte[]>(Load);
    }

    /// <summary>Makes the key where there is none yet, so that the first backup has it.</summary>
    /// <exception cref="InvalidDataException">The file is there but is not such a key.</exception>
    public void Prepare() => _ = _key.Value;

    /// <summary>HMAC-SHA256 over words that say what is being proved.</summary>
    public byte[] Prove(string words) => HMACSHA256.HashData(_key.Value, Encoding.UTF8.GetBytes(words));

    private byte[] Load()
    {
        if (!File.Exists(_file))
            Make();
        var key = File.ReadAllBytes(_file);
        return key.Length == Length
            ? key
            : throw new InvalidDataException($"{_file} is damaged. Put it back from a copy of the data folder. Without a copy, delete it: a new one is made, and links printed before are dead.");
    }

    /// <summary>Whole or not at all: written aside, then moved to its name.</summary>
    private void Make()
    {
        var aside = $"{_file}.{Guid.NewGuid():N}";
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using (var stream = new FileStream(aside, options))
        {
            stream.Write(RandomNumberGenerator.GetBytes(Length));
            stream.Flush(flushToDisk: true);
        }

        File.Move(aside, _file);
    }
}
