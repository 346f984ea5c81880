namespace ProcessorDesk.Records;

/// <summary>One writer at a time in this process, so that no writer waits on SQLite's own lock by polling.</summary>
public sealed class WriteGate : IDisposable
{
    private readonly SemaphoreSlim _gate = new(1, 1);

    /// <exception cref="TimeoutException">Another writer kept the gate for half a minute.</exception>
    public T Enter<T>(Func<T> write)
    {
        if (!_gate.Wait(TimeSpan.FromSeconds(30)))
            throw new TimeoutException("Another save has not finished for half a minute.");
        try
        {
            return write();
        }
        finally
        {
            _gate.Release();
        }
    }

    public void Dispose() => _gate.Dispose();
}
