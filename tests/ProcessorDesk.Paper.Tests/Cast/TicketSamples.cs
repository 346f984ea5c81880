using static ProcessorDesk.Paper.Tests.Cast.Samples;

namespace ProcessorDesk.Paper.Tests.Cast;

internal static class TicketSamples
{
    public static readonly CarcassTicket Carcass = new(
        Shop.Name, "Rosa Lindqvist", "White-tail deer", "buck", "AB-204417", "1042", "Animal 1 of 2", Day, "128.5 lb", "Field-dressed", Code, []);

    public static readonly CarcassTicket CarcassOnHold = Carcass with { Holds = [Pending], Code = "B1X-94T" };

    public static readonly CarcassTicket CarcassExtreme = new(
        LongShop.Name, LongName, "White-tail deer", "antlerless, button buck", "2026-ANTLERLESS-CONFIRMATION-00020441", "2026-104217", "Share: hind quarter, animal 2 of 12",
        Day, "1,128.55 lb", "Quarters, bone in", "C2Y-31W", [Pending, NoTag, new HoldNotice("Cooler failed", "Wait for the manager.")]);

    public static readonly LugTicket Lug = new(Shop.Name, "14", "Rosa Lindqvist", ["AB-204417"], "1042", "Lean trim", Day, Code, []);

    public static readonly LugTicket LugExtreme = new(
        LongShop.Name, "1,204-B", LongWord, ["AB-204417", "AB-204418", "2026-ANTLERLESS-00020441", "AB-204419", "AB-204420"],
        "2026-104217", "Lean trim for the grinder, second sort", Day, "C2Y-31W", [Pending, NoTag]);

    public static readonly BatchTicket Batch = new(
        Shop.Name, "31", "Smoked ring sausage", ["Rosa Lindqvist"], IsPooled: false, NoPork: false, "37.14 lb", Day, Code, []);

    public static readonly BatchTicket BatchExtreme = new(
        LongShop.Name, "2026-00031", "Jalapeño and cheese snack stick, mild, in the small casing", [LongName, "Rosa Lindqvist", "Ann Moss", "Ed Vale"],
        IsPooled: true, NoPork: true, "2,696.78 lb", Day, "C2Y-31W", [Pending]);

    public static readonly PartTicket Part = new(Shop.Name, "Antlers", "Rosa Lindqvist", "AB-204417", "White-tail deer", "1042", "Give back to the owner", Day, Code, []);

    public static readonly PartTicket PartExtreme = new(
        LongShop.Name, "Cape and head for the shoulder mount", LongName, "2026-ANTLERLESS-CONFIRMATION-00020441", "White-tail deer", "2026-104217",
        "To the taxidermist by written order of the owner, who signs for it", Day, "C2Y-31W", [Pending]);

    public static readonly ClaimTicket Claim = new(
        Shop, "Rosa Lindqvist", "1042", Code, Day,
        [new ClaimItem("White-tail deer, buck", "AB-204417", "Field-dressed", "128.5 lb"), new ClaimItem("White-tail deer, doe", "AB-204418", "Field-dressed", "96.0 lb")],
        ["antlers", "heart"], [],
        [
            new Fact("Smoked ring sausage", "25 lb of own meat"), new Fact("Summer sausage", "20 lb finished"),
            new Fact("Fresh hot sausage", "15 lb finished"), new Fact("Plain ground", "the rest"),
        ],
        "Expect about 107.8 lb boneless, between 91.6 and 123.9 lb (Michigan State University Extension, Preserving Food Safely).",
        "Fri 18 Dec 2026", "$50.00 paid in cash", "$310 to $365 before tax",
        "We call when it is ready. Bring this ticket and a cooler. Open Monday to Saturday, 8 to 6.",
        ["Meat not picked up within 14 days of our call is handled by our posted policy.", "Custom processed for its owner, not inspected, not for sale."]);

    public static readonly ClaimTicket ClaimWithLink = Claim with { Left = [Claim.Left[0]], Order = [.. Claim.Order.Take(3)], OwnersPage = "https://desk.example.com/Owner/1042-7K2M9QXA4RT0BC3D" };

    public static readonly ClaimTicket ClaimExtreme = Claim with
    {
        OwnersPage = "https://desk-of-the-custom-processors-of-the-whole-northern-valley.example.com:8443/Owner/104217-7K2M9QXA4RT0BC3D",
        Shop = LongShop,
        Owner = LongName,
        JobNumber = "2026-104217",
        Code = "C2Y-31W",
        Left = [.. Enumerable.Range(1, 3).Select(i => new ClaimItem("White-tail deer, antlerless, button buck", $"2026-ANTLERLESS-CONFIRMATION-0002044{i}", "Quarters, bone in", "1,128.55 lb"))],
        GiveBack = ["antlers", "cape with the head to the taxidermist", "heart", "tongue", "liver", "hide, salted and folded"],
        Holds = [Pending, NoTag],
        Order = [.. Enumerable.Range(1, 12).Select(i => new Fact($"Ask {i}: jalapeño and cheese snack stick, mild, in the small casing", $"{i * 5} lb finished, or all that is left"))],
        Terms = [.. Enumerable.Range(1, 6).Select(i => $"{i}. " + Many("Whatever is not fetched in time is kept, called about, written down and dealt with by our posted policy.", 2))],
    };
}
