namespace ProcessorDesk.Trade.Process;

/// <summary>One step of a cooling option.</summary>
/// <param name="From">Where the clock starts.</param>
/// <param name="To">Where it stops.</param>
/// <param name="AtMost">Time allowed; null where it only has to be reached.</param>
public sealed record CoolingStep(Temperature From, Temperature To, TimeSpan? AtMost)
{
    /// <summary>"130 to 80 °F in 1 h 30 min".</summary>
    public string Print() =>
        $"{From.WholeFahrenheitDown} to {To.WholeFahrenheitDown} °F" + (AtMost is { } most ? " in " + ProcessTime.Print(most) : "");
}

/// <summary>A published way to chill cooked product; the shop chooses one for each product.</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="Name">As a person reads it.</param>
/// <param name="Steps">In order, each from where the one before ends.</param>
/// <param name="OnlyCured">It is for cured product alone.</param>
/// <param name="OffUntilConfirmed">Not used until the shop has confirmed it against the source.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Mark">How the source was read: A, B, C, M, or "–".</param>
public sealed record CoolingOption(
    string Id, string Name, IReadOnlyList<CoolingStep> Steps, bool OnlyCured, bool OffUntilConfirmed, string Source, string Mark);
