namespace ProcessorDesk.Paper;

/// <summary>The owner's receipt for what was left, half Letter. Everything as printed.</summary>
/// <param name="Shop">The head.</param>
/// <param name="Owner">The owner's name.</param>
/// <param name="JobNumber">"1042".</param>
/// <param name="Code">The job's ticket code, which the QR symbol holds alone.</param>
/// <param name="LeftOn">The day of the drop-off.</param>
/// <param name="Left">What was left: animals and loose meat.</param>
/// <param name="GiveBack">Parts to give back: "Antlers".</param>
/// <param name="Holds">Open holds.</param>
/// <param name="Order">What the owner asked for: cuts and grind asks, each with its amount.</param>
/// <param name="Forecast">What the animals will probably give, with the range and its source; may be empty.</param>
/// <param name="Promise">"Fri 11 Dec 2026", or the shop's words.</param>
/// <param name="Deposit">"$50.00 paid in cash"; may be empty.</param>
/// <param name="PriceRange">"$165 to $210 before tax"; may be empty.</param>
/// <param name="HowToPickUp">Hours, place, what to bring.</param>
/// <param name="Terms">The shop's terms, one paragraph each.</param>
/// <param name="OwnersPage">The address of the owner's page; empty where the shop gives none out.</param>
public sealed record ClaimTicket(
    ShopHeader Shop,
    string Owner,
    string JobNumber,
    string Code,
    DateOnly LeftOn,
    IReadOnlyList<ClaimItem> Left,
    IReadOnlyList<string> GiveBack,
    IReadOnlyList<HoldNotice> Holds,
    IReadOnlyList<Fact> Order,
    string Forecast,
    string Promise,
    string Deposit,
    string PriceRange,
    string HowToPickUp,
    IReadOnlyList<string> Terms,
    string OwnersPage = "")
{
    /// <summary>One PDF, each ticket from a page of its own.</summary>
    public static byte[] Draw(IReadOnlyList<ClaimTicket> tickets) => ClaimTicketPaper.Draw(tickets);
}

/// <summary>One animal or delivery left at the counter: "White-tail deer, buck", "TX-0417", "Field-dressed", "128.5 lb".</summary>
public sealed record ClaimItem(string What, string Tag, string State, string Weight);
