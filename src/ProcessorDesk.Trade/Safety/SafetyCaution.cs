namespace ProcessorDesk.Trade.Safety;

/// <summary>A danger in the meat, and what each person who meets it is told. Local rules and licensed practice go before it.</summary>
/// <param name="Id">Stands for it in the shop's own rows.</param>
/// <param name="Heading">What it is called.</param>
/// <param name="AtCounter">For the clerk and the owner at drop-off.</param>
/// <param name="AtTable">For the cutter.</param>
/// <param name="AtHome">For the owner who takes the meat home.</param>
/// <param name="Source">Where it is published.</param>
public sealed record SafetyCaution(string Id, string Heading, string AtCounter, string AtTable, string AtHome, string Source);
