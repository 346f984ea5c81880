using System.Diagnostics;
using System.Text.RegularExpressions;

namespace ProcessorDesk.Web.Tests.Hosting;

/// <summary>The app as a shop starts it: a process of its own, whose console is read.</summary>
internal sealed class RunningDesk : IDisposable
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(90);
    private readonly Process _process;
    private readonly List<string> _console = [];

    public RunningDesk(params string[] arguments)
    {
        var app = Path.Combine(AppContext.BaseDirectory, "ProcessorDesk.Web.dll");
        _process = Process.Start(new ProcessStartInfo("dotnet", [app, .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = AppContext.BaseDirectory,
        })!;
        _process.ErrorDataReceived += (_, line) => Keep(line.Data);
        _process.BeginErrorReadLine();
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
        while (await _process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            Keep(line);
            if (Regex.Match(line, pattern) is { Success: true } match)
                return match;
        }

        throw new InvalidOperationException($"The app ended without saying “{pattern}”. It said: {Console}");
    }

    /// <summary>Waits for it to end by itself; its exit code.</summary>
    public async Task<int> Ends()
    {
        using var patience = new CancellationTokenSource(s_patience);
        Keep(await _process.StandardOutput.ReadToEndAsync(patience.Token));
        await _process.WaitForExitAsync(patience.Token);
        return _process.ExitCode;
    }

    public void Dispose()
    {
        if (!_process.HasExited)
            _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
    }

    private void Keep(string? line)
    {
        lock (_console)
            _console.Add(line ?? "");
    }
}
