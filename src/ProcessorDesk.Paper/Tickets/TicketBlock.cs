namespace ProcessorDesk.Paper;

/// <summary>A fact on a ticket, set as large as there is room for.</summary>
/// <param name="Label">Small, above; may be empty.</param>
/// <param name="Value">Left out where empty.</param>
/// <param name="Largest">Size in points with all the room in the world.</param>
/// <param name="Smallest">Size in points below which it is rather shortened.</param>
/// <param name="Lines">Lines it may take; one more once it is small.</param>
/// <param name="Ruled">A rule below.</param>
internal sealed record TicketBlock(string Label, string Value, double Largest, double Smallest, int Lines = 1, bool Ruled = false);
