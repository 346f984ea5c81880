namespace ProcessorDesk.Trade.Process;

/// <summary>A set of moments: stretches in order that do not touch.</summary>
internal sealed class Stretches
{
    private readonly List<Stretch> _parts = [];

    public Stretches(IEnumerable<Stretch> parts)
    {
        foreach (var part in parts.OrderBy(part => part.From))
        {
            if (_parts.Count == 0 || part.From > _parts[^1].To)
                _parts.Add(part);
            else if (part.To > _parts[^1].To)
                _parts[^1] = _parts[^1] with { To = part.To };
        }
    }

    /// <summary>In order.</summary>
    public IReadOnlyList<Stretch> Parts => _parts;

    public bool IsEmpty => _parts.Count == 0;

    public Ratio Total => _parts.Aggregate(Ratio.Zero, (sum, part) => sum + (part.To - part.From));

    public Ratio? First => IsEmpty ? null : _parts[0].From;

    public Stretches Or(Stretches other) => new(_parts.Concat(other._parts));

    public Stretches And(Stretches other)
    {
        List<Stretch> both = [];
        for (int i = 0, j = 0; i < _parts.Count && j < other._parts.Count;)
        {
            var (one, two) = (_parts[i], other._parts[j]);
            var common = new Stretch(one.From > two.From ? one.From : two.From, one.To < two.To ? one.To : two.To);
            if (common.From <= common.To)
                both.Add(common);
            if (one.To < two.To)
                i++;
            else
                j++;
        }

        return new Stretches(both);
    }

    /// <summary>The part of it from one moment to another.</summary>
    public Stretches Within(Ratio from, Ratio to) => And(new Stretches([new Stretch(from, to)]));

    /// <summary>Its first moment at or after the one given; null where there is none.</summary>
    public Ratio? FirstFrom(Ratio moment)
    {
        foreach (var part in _parts)
        {
            if (part.To >= moment)
                return part.From > moment ? part.From : moment;
        }

        return null;
    }

    /// <summary>Its last moment at or before the one given; null where there is none.</summary>
    public Ratio? LastUpTo(Ratio moment)
    {
        Ratio? last = null;
        foreach (var part in _parts.Where(part => part.From <= moment))
            last = part.To < moment ? part.To : moment;
        return last;
    }

    /// <summary>It holds the time just before that moment.</summary>
    public bool LeadsTo(Ratio moment) => _parts.Any(part => part.From < moment && moment <= part.To);
}
