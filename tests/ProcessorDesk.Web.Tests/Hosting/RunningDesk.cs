using System.Diagnostics;
using System.Text.RegularExpressions;
using System.Threading.Channels;

namespace ProcessorDesk.Web.Tests.Hosting;

/// <summary>The app as a shop starts it: a process of its own, whose console is read.</summary>
internal sealed class RunningDesk : IDisposable
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(90);
    private readonly Process _process;
    private readonly List<string> _console = [];
    private readonly Channel<string> _lines = Channel.CreateUnbounded<string>();

    public RunningDesk(params string[] arguments)
        : this([], new Dictionary<string, string>(), arguments)
    {
    }

    /// <param name="host">What the host of .NET is told before the program.</param>
    /// <param name="environment">Beside what the program inherits.</param>
    public RunningDesk(IReadOnlyList<string> host, IReadOnlyDictionary<string, string> environment, IReadOnlyList<string> arguments)
    {
        var app = Path.Combine(AppContext.BaseDirectory, "ProcessorDesk.Web.dll");
        var start = new ProcessStartInfo("dotnet", [.. host, app, .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = AppContext.BaseDirectory,
        };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        _process = Process.Start(start)!;
        // Read all the time, so that an app with much to say never waits for somebody to listen.
        _process.ErrorDataReceived += (_, line) => Keep(line.Data);
        _process.OutputDataReceived += (_, line) => Hear(line.Data);
        _process.BeginErrorReadLine();
        _process.BeginOutputReadLine();
    }

    public string Console
    {
        get
        {
            lock (_console)
                return string.Join('\n', _console);
        }
    }

    /// <summary>Reads the console until a line matches; what it matched.</summary>
    public async Task<Match> Says(string pattern)
    {
        using var patience = new CancellationTokenSource(s_patience);
        await foreach (var line in _lines.Reader.ReadAllAsync(patience.Token))
        {
            if (Regex.Match(line, pattern) is { Success: true } match)
                return match;
        }

        throw new InvalidOperationException($"The app ended without saying “{pattern}”. It said: {Console}");
    }

    /// <summary>Waits for it to end by itself; its exit code.</summary>
    public async Task<int> Ends()
    {
        using var patience = new CancellationTokenSource(s_patience);
        await _process.WaitForExitAsync(patience.Token);
        return _process.ExitCode;
    }

    /// <summary>Ends it as a power cut does, without a word to it (SIGKILL). What was on its way to it or from it is lost.</summary>
    public void Cut() => _process.Kill();

    public void Dispose()
    {
        if (!_process.HasExited)
            Cut();
        _process.WaitForExit();
        _process.Dispose();
    }

    private void Hear(string? line)
    {
        if (line is null)
        {
            _lines.Writer.Complete();
            return;
        }

        Keep(line);
        _lines.Writer.TryWrite(line);
    }

    private void Keep(string? line)
    {
        lock (_console)
            _console.Add(line ?? "");
    }
}
