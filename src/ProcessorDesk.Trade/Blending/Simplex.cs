namespace ProcessorDesk.Trade.Blending;

/// <summary>
/// The simplex method in exact fractions. The first phase looks for any point that keeps every row, the second walks from there
/// to the cheapest. The column and the row of each turn are picked by Bland's rule, the first of those that serve, so that it
/// cannot go round in circles: it always ends, and the same program always ends at the same point.
/// </summary>
/// <remarks>
/// For programs whose variables the rows bound from above, such as parts of a whole, and whose exact rows do not follow from
/// one another.
/// </remarks>
internal sealed class Simplex
{
    private readonly Ratio[][] _rows;
    private readonly int[] _basis;
    private readonly int _columns;

    /// <summary>A column for each variable, one of slack for each row that is not exact, and the limit behind them.</summary>
    private Simplex(int variables, IReadOnlyList<SimplexRow> rows)
    {
        _columns = variables + rows.Count(row => !row.Exactly);
        _basis = new int[rows.Count];
        _rows = new Ratio[rows.Count][];
        var slack = variables;
        for (var r = 0; r < rows.Count; r++)
        {
            var (row, turned) = (rows[r], rows[r].Limit.Sign < 0);
            _rows[r] = new Ratio[_columns + 1];
            for (var c = 0; c < variables; c++)
                _rows[r][c] = turned ? -row.Coefficients[c] : row.Coefficients[c];
            _rows[r][_columns] = turned ? -row.Limit : row.Limit;
            _basis[r] = row.Exactly || turned ? MadeUp(r) : slack;
            if (!row.Exactly)
                _rows[r][slack++] = turned ? -Ratio.One : Ratio.One;
        }
    }

    /// <summary>The variables, zero or more each, at which the sum of cost × variable is least; null where no point keeps every row.</summary>
    public static Ratio[]? Minimise(IReadOnlyList<Ratio> costs, IReadOnlyList<SimplexRow> rows)
    {
        var simplex = new Simplex(costs.Count, rows);
        if (!simplex.FindsAPoint())
            return null;
        simplex.Improve(column => column < costs.Count ? costs[column] : Ratio.Zero);
        return simplex.Point(costs.Count);
    }

    /// <summary>
    /// A row without a slack to start from gets a made-up variable that is no column: it may leave the basis and never
    /// comes back. While one of them is above zero its row is not kept.
    /// </summary>
    private int MadeUp(int row) => _columns + row;

    private bool IsMadeUp(int row) => _basis[row] >= _columns;

    private bool FindsAPoint()
    {
        Improve(column => column < _columns ? Ratio.Zero : Ratio.One);
        for (var r = 0; r < _rows.Length; r++)
        {
            if (!IsMadeUp(r))
                continue;
            if (_rows[r][_columns].Sign > 0)
                return false;
            Pivot(r, Array.FindIndex(_rows[r], entry => !entry.IsZero));
        }

        return true;
    }

    private void Improve(Func<int, Ratio> cost)
    {
        while (Entering(cost) is { } column)
            Pivot(Leaving(column), column);
    }

    /// <summary>The first column that makes it cheaper; null where none does.</summary>
    private int? Entering(Func<int, Ratio> cost)
    {
        for (var c = 0; c < _columns; c++)
        {
            var change = cost(c);
            for (var r = 0; r < _rows.Length; r++)
                change -= cost(_basis[r]) * _rows[r][c];
            if (change.Sign < 0)
                return c;
        }

        return null;
    }

    /// <summary>The row that binds first as the column grows.</summary>
    private int Leaving(int column) =>
        Enumerable.Range(0, _rows.Length)
            .Where(r => _rows[r][column].Sign > 0)
            .MinBy(r => (_rows[r][_columns] / _rows[r][column], _basis[r]));

    private void Pivot(int row, int column)
    {
        var pivot = _rows[row][column];
        _rows[row] = [.. _rows[row].Select(entry => entry / pivot)];
        for (var r = 0; r < _rows.Length; r++)
        {
            var times = _rows[r][column];
            if (r == row || times.IsZero)
                continue;
            for (var c = 0; c <= _columns; c++)
                _rows[r][c] -= times * _rows[row][c];
        }

        _basis[row] = column;
    }

    private Ratio[] Point(int variables)
    {
        var point = new Ratio[variables];
        for (var r = 0; r < _rows.Length; r++)
        {
            if (_basis[r] < variables)
                point[_basis[r]] = _rows[r][_columns];
        }

        return point;
    }
}
