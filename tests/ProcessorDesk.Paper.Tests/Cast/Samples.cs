using ProcessorDesk.Trade;

namespace ProcessorDesk.Paper.Tests.Cast;

/// <summary>Papers of a made-up shop: each ordinary, and each as full as a bad day makes it.</summary>
internal static class Samples
{
    public const string Code = "A0C-7K2";
    public const string LongName = "Wilhelmina-Konstancja Świętosławska-Öztürk y Fernández de la Mañana";
    public const string LongWord = "Nebuchadnezzarsonovichevskayamikhailovnaovskaya-Kiss";

    public static readonly DateOnly Day = new(2026, 11, 27);

    public static readonly HoldNotice Pending = new("Disease test pending", "Do not cut, grind, mix or hand over until the result is in.");
    public static readonly HoldNotice NoTag = new("Tag missing", "Do not cut before the owner brings the official tag or a confirmation number.");

    public static readonly ShopHeader Shop = new("Cold Fork Custom Meats", ["118 Quarry Road, Alder Bend", "555-0142"]);

    public static readonly ShopHeader LongShop = new(
        "Cold Fork Custom Meats, Smokehouse and Family Provisioners of Alder Bend",
        ["118 Quarry Road, the brick building behind the feed store, second gate on the left", "Alder Bend", "Telephone 555-0142, after hours 555-0143", "License 00-417-CX"]);

    public static readonly Caution Lead = new(
        "Lead", "Fragments too small to see may be far from the wound, and grinding spreads them. Trim at least 4 in around the path. Children under six and pregnant women are most at risk.",
        "Oregon State University PNW 517; Wisconsin DNR");

    public static readonly Caution Disease = new(
        "Chronic wasting disease", "Not tested is not negative. Work one animal at a time; do not cut brain, cord, nodes or spleen. Follow your state's rules.",
        "Michigan State University Extension 2022; CDC");

    public static Weight Lb(decimal pounds) => Weight.FromPounds(pounds);

    public static string Many(string word, int count) => string.Join(' ', Enumerable.Repeat(word, count));
}
