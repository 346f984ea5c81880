using System.Globalization;
using ProcessorDesk.Records;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Invented owners: names put together from pieces, and telephones in the range kept free for made-up people (555-0100 to 0199).</summary>
internal static class People
{
    private const int FirstAreaCode = 201;

    private static readonly string[] s_given =
    [
        "Ada", "Bela", "Cato", "Dora", "Edda", "Finn", "Gerda", "Hale", "Ines", "Jory", "Kato", "Lena", "Milo", "Nella", "Otis", "Pia", "Quill", "Rosa",
        "Sten", "Tilda", "Ulla", "Vera", "Wim", "Xenia", "Yara", "Zeno", "Anouk", "Benno", "Clea", "Darrow",
    ];

    private static readonly string[] s_before =
    [
        "Alder", "Bracken", "Cinder", "Dapple", "Elder", "Fallow", "Gorse", "Hazel", "Ivory", "Juniper", "Kestrel", "Larch", "Marl", "Nettle", "Osier",
        "Pebble", "Quarry", "Rowan", "Sedge", "Thistle", "Umber", "Vetch", "Willow", "Yarrow", "Ashen",
    ];

    private static readonly string[] s_after =
        ["by", "croft", "dale", "field", "ford", "garth", "ham", "hurst", "ley", "mere", "mont", "rick", "shaw", "stead", "thorpe", "ton", "vale", "well", "wick", "worth"];

    /// <param name="place">Which of the owners; each has another telephone.</param>
    public static Owner Owner(int place, Dice dice)
    {
        var phone = string.Create(CultureInfo.InvariantCulture, $"({FirstAreaCode + place / 100:000}) 555-{100 + place % 100:0000}");
        var owner = new Owner("new", phone);
        owner.Describe(Name(dice), phone, dice.In(80) ? $"{dice.Between(1, 240)} {dice.Of(s_before)} Lane, Nettlefork" : null, null, dice.In(10));
        return owner;
    }

    public static string Name(Dice dice) => $"{dice.Of(s_given)} {dice.Of(s_before)}{dice.Of(s_after)}";
}
