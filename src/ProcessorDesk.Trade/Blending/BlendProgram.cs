namespace ProcessorDesk.Trade.Blending;

/// <summary>A block as a linear program: how much of each material goes into the total, in the unit the total is counted in.</summary>
/// <param name="Lows">The least of each material.</param>
/// <param name="Highs">The most of each material.</param>
internal sealed record BlendProgram(BlendWanted Wanted, Ratio Total, Ratio[] Lows, Ratio[] Highs)
{
    private readonly Ratio[] _fats = [.. Wanted.Materials.Select(material => material.Fat.ToRatio())];

    /// <summary>In parts of the block, with these bounds on the materials and no others.</summary>
    public static BlendProgram InParts(BlendWanted wanted, IEnumerable<BlendBound> bounds)
    {
        var lows = new Ratio[wanted.Materials.Count];
        var highs = new Ratio[wanted.Materials.Count];
        Array.Fill(highs, Ratio.One);
        foreach (var bound in bounds)
        {
            if (bound.Kind == BlendBoundKind.LeastShare)
                lows[bound.Material] = bound.Part;
            else if (bound.Kind is BlendBoundKind.MostShare or BlendBoundKind.OnHand)
                highs[bound.Material] = Ratio.Min(highs[bound.Material], bound.Part);
        }

        return new BlendProgram(wanted, Ratio.One, lows, highs);
    }

    /// <summary>The cheapest mix that keeps the bounds on the materials and the block's band of fat; null where none does.</summary>
    public Ratio[]? Cheapest()
    {
        var costs = Wanted.Materials.Select(material => Ratio.Of(material.Price.CentsPerPound, 1)).ToArray();
        return Simplex.Minimise(costs, Rows()) is { } over ? [.. over.Zip(Lows, (more, low) => low + more)] : null;
    }

    /// <summary>Whether some mix keeps the bounds on the materials, whatever its fat.</summary>
    public bool CanBeMixed() =>
        Lows.Zip(Highs).All(bound => bound.First <= bound.Second) && Ratio.Sum(Lows) <= Total && Total <= Ratio.Sum(Highs);

    /// <summary>The fat in the leanest mix that keeps the bounds on the materials, of which there is one.</summary>
    public Ratio LeastFat() => FatFilledUp(Enumerable.Range(0, _fats.Length).OrderBy(i => _fats[i]));

    /// <summary>The fat in the fattest mix that keeps the bounds on the materials, of which there is one.</summary>
    public Ratio MostFat() => FatFilledUp(Enumerable.Range(0, _fats.Length).OrderByDescending(i => _fats[i]));

    /// <summary>The variables are what goes in over the least of each material, so that none is below zero.</summary>
    private List<SimplexRow> Rows()
    {
        var fatOfLows = FatIn(Lows);
        var rows = new List<SimplexRow>
        {
            new([.. Lows.Select(_ => Ratio.One)], Total - Ratio.Sum(Lows), Exactly: true),
            new(_fats, Total * Wanted.Fat.Most.ToRatio() - fatOfLows, Exactly: false),
            new([.. _fats.Select(fat => -fat)], fatOfLows - Total * Wanted.Fat.Least.ToRatio(), Exactly: false),
        };
        for (var i = 0; i < Highs.Length; i++)
        {
            if (Highs[i] < Total)
                rows.Add(new SimplexRow([.. Highs.Select((_, j) => j == i ? Ratio.One : Ratio.Zero)], Highs[i] - Lows[i], Exactly: false));
        }

        return rows;
    }

    private Ratio FatFilledUp(IEnumerable<int> order)
    {
        var left = Total - Ratio.Sum(Lows);
        var amounts = Lows.ToArray();
        foreach (var i in order)
        {
            var more = Ratio.Min(left, Highs[i] - Lows[i]);
            amounts[i] += more;
            left -= more;
        }

        return FatIn(amounts);
    }

    private Ratio FatIn(Ratio[] amounts) => Ratio.Sum(amounts.Zip(_fats, (amount, fat) => amount * fat));
}
