using static ProcessorDesk.Paper.Tests.Cast.Samples;

namespace ProcessorDesk.Paper.Tests.Cast;

internal static class LetterSamples
{
    public static readonly CutSheet Cut = new(
        Shop.Name, 2, new DateTime(2026, 11, 28, 7, 5, 0), "Rosa Lindqvist", "1042", Code, "Fri 18 Dec 2026", NoPork: false,
        [new CutSheetAnimal("White-tail deer, buck", "AB-204417", "whole", "96.5 lb hanging", "Antlers, heart"), new CutSheetAnimal("White-tail deer, doe", "AB-204418", "whole", "72.0 lb hanging", "")],
        [],
        [
            new CutSheetLine("Backstrap", "Butterfly steaks, 1 in", "4 to a pack"), new CutSheetLine("Tenderloin", "Whole", "2 to a pack"),
            new CutSheetLine("Hind quarters", "Roasts, 3 lb, the rest to grind", "1 to a pack"), new CutSheetLine("Front quarters", "Grind"),
            new CutSheetLine("Neck", "Grind"), new CutSheetLine("Flank and ribs", "Grind"),
        ],
        ["Glands out", "Bloodshot cut away", "Hair off", "Bone chips out", "Wound path checked", "Tag stays with the meat"],
        [
            new CutSheetAsk("Smoked ring sausage", "25 lb of own meat", "70 : 30 with pork trim"), new CutSheetAsk("Summer sausage", "20 lb finished", "80 : 20 with pork trim"),
            new CutSheetAsk("Fresh hot sausage", "15 lb finished", "75 : 25 with pork trim"), new CutSheetAsk("Plain ground", "the rest", "no fat added"),
        ],
        8, [Lead, Disease], "");

    public static readonly CutSheet CutExtreme = Cut with
    {
        ShopName = LongShop.Name,
        Owner = LongName,
        JobNumber = "2026-104217",
        Code = "C2Y-31W",
        Revision = 12,
        Promise = "as soon as the laboratory answers",
        NoPork = true,
        Animals = [.. Enumerable.Range(1, 3).Select(i => new CutSheetAnimal("White-tail deer, antlerless, button buck", $"2026-ANTLERLESS-CONFIRMATION-0002044{i}", "hind quarter", "1,096.55 lb chilled hanging", "Antlers, cape with the head to the taxidermist, heart, tongue"))],
        Holds = [Pending, NoTag],
        Cuts = [.. Cut.Cuts, .. Enumerable.Range(1, 6).Select(i => new CutSheetLine($"Hind quarter, side {i}, sirloin tip and eye of round", "Cut as the note says: " + Many("steaks against the grain, roasts tied and netted,", 3), "as many to a pack as fit two people"))],
        Checklist = [.. Cut.Checklist, "Spinal cord taken out and set aside for the removal bin", "Second person has looked", "Knife and table washed between animals"],
        Asks = [.. Enumerable.Range(1, 12).Select(i => new CutSheetAsk($"Jalapeño and cheese snack stick {i}, mild, in the small casing", $"{i * 5} lb finished, or all that is left over after the asks before it", "no pork: 90 : 10 with beef fat"))],
        Lugs = 18,
        Note = Many("The owner asks to be called before anything is cut from the left side.", 6),
    };
}
