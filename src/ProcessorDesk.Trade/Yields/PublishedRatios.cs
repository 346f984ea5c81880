using static ProcessorDesk.Trade.Species;
using static ProcessorDesk.Trade.Yields.CarcassState;

namespace ProcessorDesk.Trade.Yields;

/// <summary>
/// Every published yield ratio, once, with its source and mark. Guides for a shop: ratios are direct, never chained, since
/// definitions of the states differ between publishers.
/// </summary>
public static class PublishedRatios
{
    private const string MichiganDeer = "Michigan State University Extension, Preserving Food Safely, 01600637 (deer, from its range of 50 to 200 lb)";
    private const string MichiganElk = "Michigan State University Extension, Preserving Food Safely, 01600636 (elk size)";
    private const string Noble = "Noble Research Institute 2012 (white-tailed deer, 95 % range)";
    private const string Wyoming = "University of Wyoming bulletins, as quoted";
    private const string Alberta = "Alberta pronghorn study, 1,210 animals";
    private const string Kentucky = "University of Kentucky ASC-179; Mississippi State University P3489; University of Tennessee PB1822";
    private const string OklahomaBeef = "Oklahoma Department of Agriculture; range Michigan State University, freezer beef";
    private const string MichiganBeef = "Michigan State University, freezer beef; range from memory";
    private const string HogDressing = "South Dakota State University; NCAT ATTRA";
    private const string OklahomaHog = "Oklahoma Department of Agriculture";
    private const string Wisconsin = "University of Wisconsin";
    private const string Tennessee = "University of Tennessee";
    private const string Practice = "common practice, no source";

    private static readonly Species[] s_deer = [WhiteTailDeer, MuleDeer];

    /// <summary>The rules, in the order of the species.</summary>
    public static IReadOnlyList<PublishedRatio> All { get; } =
    [
        new("deer-dressed-live", s_deer, FieldDressed, Live, "", Ratio.Of(134, 105), default,
            new(Ratio.Of(126, 105), Ratio.Of(141, 105), false), null, Noble, "A"),
        new("deer-dressed-hanging", s_deer, FieldDressed, Hanging, "", Of(0.75m), default, null,
            Spread.Between(0.70m, 0.85m), "news column; definitions vary", "C"),
        new("deer-dressed-boneless", s_deer, FieldDressed, Boneless, "", Of(0.48m), default, Spread.Around(5m),
            Spread.Around(15m), MichiganDeer, "A"),
        new("deer-dressed-bonein", s_deer, FieldDressed, BoneIn, "", Of(0.61m), Weight.FromPounds(-3.7m), Spread.Around(5m),
            Spread.Around(15m), MichiganDeer, "A"),
        new("deer-hanging-boneless", [WhiteTailDeer], Hanging, Boneless, "", Of(0.58m), default, null, Spread.Between(0.47m, 0.67m), Wyoming, "B"),
        new("muledeer-hanging-boneless", [MuleDeer], Hanging, Boneless, "", Of(0.58m), default, Spread.Between(0.56m, 0.60m),
            Spread.Between(0.47m, 0.67m), Wyoming, "B"),
        new("deer-quarters-boneless", s_deer, Quarters, Boneless, "", Of(0.85m), default, null, null, Practice, "–"),

        new("elk-dressed-boneless", [Elk], FieldDressed, Boneless, "", Of(0.43m), default, Spread.Around(7m), Spread.Around(21m), MichiganElk, "A"),
        new("elk-dressed-bonein", [Elk], FieldDressed, BoneIn, "", Of(0.57m), Weight.FromPounds(-2.8m), Spread.Around(7m),
            Spread.Around(21m), MichiganElk, "A"),
        new("moose-dressed-boneless", [Moose], FieldDressed, Boneless, "", Of(0.43m), default, Spread.Around(7m),
            Spread.Around(21m), MichiganElk + ", used for moose by size", "A"),
        new("moose-dressed-bonein", [Moose], FieldDressed, BoneIn, "", Of(0.57m), Weight.FromPounds(-2.8m),
            Spread.Around(7m), Spread.Around(21m), MichiganElk + ", used for moose by size", "A"),
        new("pronghorn-dressed-live", [Pronghorn], FieldDressed, Live, "", Of(1.36m), default, null, null, Alberta + ", males", "A"),
        new("pronghorn-dressed-live-female", [Pronghorn], FieldDressed, Live, "females", Of(1.51m), default, null, null, Alberta + ", females", "A"),

        new("beef-live-hanging", [Beef], Live, Hanging, "", Of(0.61m), default, Spread.Between(0.60m, 0.64m),
            Spread.Between(0.55m, 0.70m), Kentucky, "A"),
        new("beef-hanging-takehome", [Beef], Hanging, TakeHome, "", Of(0.705m), default, null, Spread.Between(0.65m, 0.80m), OklahomaBeef, "A"),
        new("beef-hanging-takehome-michigan", [Beef], Hanging, TakeHome, "by the plain 70 %", Of(0.70m), default,
            Spread.Between(0.68m, 0.70m), Spread.Between(0.65m, 0.80m), "Michigan State University, freezer beef", "A"),
        new("beef-hanging-boneless", [Beef], Hanging, Boneless, "", Of(0.50m), default, null, Spread.Between(0.48m, 0.60m), MichiganBeef, "A"),
        new("hog-live-hanging", [Hog], Live, Hanging, "", Of(0.72m), default, null, Spread.Between(0.68m, 0.77m),
            HogDressing + " (scalded, head on)", "A"),
        new("hog-live-hanging-skinned", [Hog], Live, Hanging, "skinned, head off", Of(0.63m), default, null,
            Spread.Between(0.60m, 0.67m), HogDressing + " (skinned, head off); range from memory", "A"),
        new("hog-hanging-takehome", [Hog], Hanging, TakeHome, "", Of(0.80m), default, null, null,
            OklahomaHog + " (with head, feet and back fat)", "A"),
        new("hog-hanging-takehome-lean", [Hog], Hanging, TakeHome, "without head, feet and back fat", Of(0.63m), default,
            null, null, OklahomaHog + " (without head, feet and back fat)", "A"),
        new("lamb-live-hanging", [Lamb], Live, Hanging, "", Of(0.53m), default, Spread.Between(0.52m, 0.54m),
            Spread.Between(0.44m, 0.56m), Wisconsin, "A"),
        new("lamb-hanging-bonein", [Lamb], Hanging, BoneIn, "", Of(0.70m), default, Spread.Between(0.65m, 0.75m), null, Wisconsin, "A"),
        new("lamb-hanging-boneless", [Lamb], Hanging, Boneless, "", Of(0.47m), default, Spread.Between(0.43m, 0.50m), null, Wisconsin, "A"),
        new("goat-live-hanging", [Goat], Live, Hanging, "", Of(0.48m), default, null, Spread.Between(0.39m, 0.55m), Tennessee, "A"),
        new("goat-hanging-bonein", [Goat], Hanging, BoneIn, "", Of(0.75m), default, Spread.Between(0.70m, 0.85m), null, Tennessee, "A"),
        new("goat-hanging-boneless", [Goat], Hanging, Boneless, "", Of(0.50m), default, Spread.Between(0.40m, 0.60m), null, Tennessee, "A"),
    ];

    /// <summary>The rule used unasked for a species between two states; null where none is published.</summary>
    public static PublishedRatio? Find(Species species, CarcassState from, CarcassState to) =>
        All.FirstOrDefault(ratio => ratio.From == from && ratio.To == to && ratio.Variant.Length == 0 && ratio.Species.Contains(species));

    /// <summary>The rules for other animals or another cutting between two states: females, skinned, without the head.</summary>
    public static IEnumerable<PublishedRatio> Variants(Species species, CarcassState from, CarcassState to) =>
        From(species, from).Where(ratio => ratio.To == to && ratio.Variant.Length > 0);

    /// <summary>Every rule that leads on from a state, variants too.</summary>
    public static IEnumerable<PublishedRatio> From(Species species, CarcassState from) =>
        All.Where(ratio => ratio.From == from && ratio.Species.Contains(species));

    private static Ratio Of(decimal factor) => Ratio.FromDecimal(factor);
}
