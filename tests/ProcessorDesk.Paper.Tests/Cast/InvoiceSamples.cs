using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using static ProcessorDesk.Paper.Tests.Cast.Samples;

namespace ProcessorDesk.Paper.Tests.Cast;

internal static class InvoiceSamples
{
    private static readonly YieldAccount Yield = new(
        ["Field-dressed", "Hanging", "Lean trim"],
        [new YieldRow("White-tail deer, tag AB-204417", ["128.5 lb", "96.5 lb", "57.90 lb"]), new YieldRow("White-tail deer, tag AB-204418", ["96.0 lb", "72.0 lb", "34.85 lb"])],
        new YieldRow("Together", ["224.5 lb", "168.5 lb", "92.75 lb"]),
        new YieldRange(
            "From 224.5 lb field-dressed: about 107.8 lb boneless, usually 102.4 to 113.1 lb, at the extreme 91.6 to 123.9 lb.",
            "Michigan State University Extension, Preserving Food Safely (01600637)", Lb(92.75m), "92.75 lb", Lb(107.76m), Lb(102.372m), Lb(113.148m), Lb(91.596m), Lb(123.924m)),
        "92.75 lb is inside the extreme range: on the low side, not out of the ordinary for trimmed deer.",
        [
            new WayStep(WayKind.Stage, "Field-dressed", Lb(224.5m), "224.5 lb"), new WayStep(WayKind.Loss, "Hide, head and feet", Lb(56m), "56.0 lb"),
            new WayStep(WayKind.Stage, "Hanging", Lb(168.5m), "168.5 lb"), new WayStep(WayKind.Loss, "Bone", Lb(52m), "52.0 lb"),
            new WayStep(WayKind.Loss, "Fat, glands, bloodshot", Lb(19.5m), "19.5 lb"), new WayStep(WayKind.Loss, "Shrink and not accounted for", Lb(4.25m), "4.25 lb"),
            new WayStep(WayKind.Stage, "Lean", Lb(92.75m), "92.75 lb"), new WayStep(WayKind.Added, "Pork", Lb(18.94m), "18.94 lb"),
            new WayStep(WayKind.Added, "Spices, cure and water", Lb(2.51m), "2.51 lb"), new WayStep(WayKind.Loss, "Cooking and smoking", Lb(6.12m), "6.12 lb"),
            new WayStep(WayKind.Stage, "In the boxes", Lb(108.08m), "108.08 lb"),
        ]);

    public static readonly Invoice Ordinary = new(
        Shop, "3007", new DateOnly(2026, 12, 18), "1042", null, "Rosa Lindqvist", ["44 Upper Mill Lane", "Alder Bend"],
        [
            new InvoiceLine("Processing, field-dressed deer", "2", "$95.00", "$190.00"), new InvoiceLine("Smoked ring sausage", "37.14 lb", "$3.75 / lb", "$139.28", "T"),
            new InvoiceLine("Summer sausage", "20.13 lb", "$4.25 / lb", "$85.55", "T"), new InvoiceLine("Fresh hot sausage", "15.00 lb", "$2.50 / lb", "$37.50", "T"),
            new InvoiceLine("Pork trim", "18.94 lb", "$1.95 / lb", "$36.93", "T"),
        ],
        [new Fact("Subtotal", "$489.26"), new Fact("Sales tax 6.25 % on $299.26", "$18.70")], "$507.96",
        [new Fact("Deposit, Fri 27 Nov 2026, cash", "-$50.00")], "$457.96",
        "T: taxed. Cutting and wrapping your own animal is not taxed here.", "Payment is due at pickup.", Yield);

    public static readonly Invoice CreditNote = Ordinary with
    {
        Number = "3009",
        Credits = "3007",
        Lines = [new InvoiceLine("Summer sausage", "20.13 lb", "$4.25 / lb", "-$85.55", "T")],
        Totals = [new Fact("Subtotal", "-$85.55"), new Fact("Sales tax 6.25 %", "-$5.35")],
        Total = "-$90.90",
        Payments = [],
        Balance = "$90.90",
        Yield = null,
    };

    /// <summary>Plain ground handed over later: $39.74 on top of what the first invoice left, and $20.00 paid since.</summary>
    public static readonly Invoice Second = Ordinary with
    {
        Number = "3012",
        Date = new DateOnly(2026, 12, 23),
        Lines = [new InvoiceLine("Plain ground", "37.40 lb", "$1.00 / lb", "$37.40", "T")],
        Totals = [new Fact("Subtotal", "$37.40"), new Fact("Sales tax 6.25 % on $37.40", "$2.34")],
        Total = "$39.74",
        Payments = [],
        Balance = "",
        Account = new JobAccount(
            new Fact("Brought forward: invoice 3007 of Fri 18 Dec 2026, less what was paid on it", "$57.96"),
            [new Fact("Check, Mon 21 Dec 2026", "-$20.00")], new Fact("To pay", "$77.70")),
        Yield = null,
    };

    public static readonly Invoice Extreme = Ordinary with
    {
        Shop = LongShop,
        Number = "2026-0003007",
        Owner = LongName,
        OwnerLines = ["The long house at the end of the road past the second mill, upper floor", "Alder Bend", "c/o " + LongWord],
        Lines = [.. Enumerable.Range(1, 40).Select(i => new InvoiceLine($"Line {i}: jalapeño and cheese snack stick, mild, in the small casing, vacuum packed", "1,240.00 lb", "$14.25 / lb", "$17,670.00", "T"))],
        Totals = [new Fact("Subtotal", "$706,800.00"), new Fact("State and county sales tax together 6.25 % on all lines marked T", "$44,175.00")],
        Total = "$750,975.00",
        Payments = [.. Enumerable.Range(1, 6).Select(i => new Fact($"Payment {i}, Fri 27 Nov 2026, check handed over by the owner's brother", "-$50.00"))],
        Balance = "$750,675.00",
        Note = Many("Payment is due at pickup unless we agreed otherwise in writing.", 4),
        Yield = Yield with
        {
            Stages = ["Arrival", "Hot hanging", "Chilled hanging", "Quarters in lugs", "Lean trim", "Cut packs"],
            Animals = [.. Enumerable.Range(1, 3).Select(i => new YieldRow($"White-tail deer, tag 2026-ANTLERLESS-CONFIRMATION-0002044{i}", ["1,128.55 lb", "1,096.50 lb", "1,090.00 lb", "", "157.90 lb", "1,022.25 lb"]))],
            Together = new YieldRow("Together", ["3,385.65 lb", "3,289.50 lb", "3,270.00 lb", "", "473.70 lb", "3,066.75 lb"]),
        },
    };

    public static readonly Invoice SecondExtreme = Extreme with
    {
        Payments = [],
        Account = new JobAccount(
            new Fact("Brought forward: " + Many("invoice 2026-0003007 of Fri 18 Dec 2026, less what was paid on it;", 4), "$1,750,675.00"),
            [.. Enumerable.Range(1, 12).Select(i => new Fact($"Payment {i}, Fri 27 Nov 2026, check handed over by the owner's brother", "-$50,000.00"))],
            new Fact("In the favour of the owner, to be given back or kept for the next job", "$1,901,450.00")),
    };
}
