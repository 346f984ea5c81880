using System.Buffers.Binary;
using System.Text;

namespace ProcessorDesk.Paper.Drawing;

/// <summary>An embedded TrueType font: its bytes, which characters it has, and how high its capitals stand.</summary>
internal sealed class FontFile
{
    private readonly HashSet<int> _characters = [];

    private FontFile(byte[] bytes)
    {
        Bytes = bytes;
        ReadCharacterMap(Table("cmap"));
        var unitsPerEm = UInt16(Table("head") + 18);
        CapHeight = UInt16(Table("OS/2") + 88) / (double)unitsPerEm;
    }

    public static FontFile Regular { get; } = Embedded("OpenSans-Regular.ttf");

    public static FontFile Bold { get; } = Embedded("OpenSans-Bold.ttf");

    public byte[] Bytes { get; }

    /// <summary>Height of a capital letter as a part of the font size.</summary>
    public double CapHeight { get; }

    public bool Has(Rune character) => _characters.Contains(character.Value);

    private static FontFile Embedded(string name)
    {
        using var stream = typeof(FontFile).Assembly.GetManifestResourceStream("ProcessorDesk.Paper.Fonts." + name)
            ?? throw new InvalidOperationException($"The font {name} is not embedded.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new FontFile(bytes);
    }

    private ushort UInt16(int offset) => BinaryPrimitives.ReadUInt16BigEndian(Bytes.AsSpan(offset));

    private int Int32(int offset) => checked((int)BinaryPrimitives.ReadUInt32BigEndian(Bytes.AsSpan(offset)));

    private int Table(string tag)
    {
        for (int i = 0, entry = 12; i < UInt16(4); i++, entry += 16)
            if (Encoding.ASCII.GetString(Bytes, entry, 4) == tag)
                return Int32(entry + 8);
        throw new InvalidOperationException($"The font has no {tag} table.");
    }

    /// <summary>Reads the format 4 subtable: segments of the basic plane (OpenType specification, cmap).</summary>
    private void ReadCharacterMap(int cmap)
    {
        for (int i = 0, entry = cmap + 4; i < UInt16(cmap + 2); i++, entry += 8)
        {
            var subtable = cmap + Int32(entry + 4);
            if (UInt16(subtable) != 4)
                continue;
            ReadSegments(subtable);
            return;
        }

        throw new InvalidOperationException("The font has no format 4 character map.");
    }

    private void ReadSegments(int subtable)
    {
        var twice = UInt16(subtable + 6);
        for (var segment = 0; segment < twice; segment += 2)
        {
            int last = UInt16(subtable + 14 + segment), first = UInt16(subtable + 16 + twice + segment);
            int delta = UInt16(subtable + 16 + 2 * twice + segment), at = subtable + 16 + 3 * twice + segment;
            int rangeOffset = UInt16(at);
            for (var code = first; code <= last && code != 0xFFFF; code++)
            {
                var glyph = rangeOffset == 0 ? code + delta : UInt16(at + rangeOffset + 2 * (code - first));
                if ((glyph & 0xFFFF) != 0)
                    _characters.Add(code);
            }
        }
    }
}
