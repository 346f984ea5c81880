namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>A batch divided over loads of the mixer, and how good that is shown to be.</summary>
/// <param name="Loads">The fewest that hold it.</param>
/// <param name="Cuts">Pieces more than there are contributions.</param>
/// <param name="CutsAtLeast">No way in as few loads has fewer cuts than this.</param>
/// <param name="Spread">Divisions between the fullest and the emptiest load.</param>
/// <param name="SpreadAtLeast">No way in as few loads and with <paramref name="Cuts"/> cuts has less spread than this.</param>
/// <param name="FillGaveWay">The total is too small for every load to reach the smallest good fill.</param>
public sealed record LoadDivision(IReadOnlyList<MixerLoad> Loads, long Cuts, long CutsAtLeast, long Spread, long SpreadAtLeast, bool FillGaveWay)
{
    /// <summary>Nothing in as few loads is better, first in cuts and then in balance.</summary>
    public bool IsProved => Cuts == CutsAtLeast && Spread == SpreadAtLeast;
}
