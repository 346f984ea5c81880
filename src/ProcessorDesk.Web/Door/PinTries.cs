using System.Collections.Concurrent;

namespace ProcessorDesk.Web.Door;

/// <summary>Makes guessing slow: after five wrong PINs in a row for one name a wait, twice as long each time, an hour at most.</summary>
public sealed class PinTries(TimeProvider clock)
{
    private const int Free = 5;
    private static readonly TimeSpan FirstWait = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan LongestWait = TimeSpan.FromHours(1);
    private readonly ConcurrentDictionary<string, (int Wrong, DateTimeOffset Until)> _tries = new();

    /// <summary>How long to wait before the next try; zero where one may try now.</summary>
    public TimeSpan Wait(string whose)
    {
        var left = _tries.TryGetValue(whose, out var tries) ? tries.Until - clock.GetUtcNow() : TimeSpan.Zero;
        return left > TimeSpan.Zero ? left : TimeSpan.Zero;
    }

    public void Wrong(string whose) => _tries.AddOrUpdate(
        whose, _ => (1, DateTimeOffset.MinValue), (_, before) => (before.Wrong + 1, Until(before.Wrong + 1)));

    public void Right(string whose) => _tries.TryRemove(whose, out _);

    /// <summary>The wait in words: "Too many wrong tries. Wait 2 minutes, then try again."</summary>
    public string? Words(string whose)
    {
        var wait = Wait(whose);
        if (wait == TimeSpan.Zero) return null;
        var minutes = (wait.Ticks + TimeSpan.TicksPerMinute - 1) / TimeSpan.TicksPerMinute;
        return $"Too many wrong tries. Wait {minutes} {(minutes == 1 ? "minute" : "minutes")}, then try again.";
    }

    private DateTimeOffset Until(int wrong)
    {
        if (wrong < Free) return DateTimeOffset.MinValue;
        var doublings = Math.Min(wrong - Free, 6);
        var wait = FirstWait * (1 << doublings);
        return clock.GetUtcNow() + (wait < LongestWait ? wait : LongestWait);
    }
}
