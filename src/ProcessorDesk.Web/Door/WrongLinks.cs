using System.Net;

namespace ProcessorDesk.Web.Door;

/// <summary>
/// How many wrong links an address has tried this minute. Eighty bits are not guessed; this keeps somebody who tries all the same from
/// keeping the shop's PC busy.
/// </summary>
public sealed class WrongLinks(TimeProvider clock)
{
    /// <summary>More in a minute, and the address waits for the next one.</summary>
    public const int Most = 30;

    private readonly Lock _lock = new();
    private readonly Dictionary<string, int> _wrong = [];
    private long _minute;

    public bool AreTooMany(IPAddress? from)
    {
        lock (_lock)
            return ThisMinute().GetValueOrDefault(Name(from)) >= Most;
    }

    public void Note(IPAddress? from)
    {
        lock (_lock)
            ThisMinute()[Name(from)] = _wrong.GetValueOrDefault(Name(from)) + 1;
    }

    /// <summary>A new minute forgets the one before, so this never grows.</summary>
    private Dictionary<string, int> ThisMinute()
    {
        var minute = clock.GetUtcNow().Ticks / TimeSpan.TicksPerMinute;
        if (minute != _minute)
            _wrong.Clear();
        _minute = minute;
        return _wrong;
    }

    private static string Name(IPAddress? from) => from?.ToString() ?? "";
}
