using System.Diagnostics;

namespace ProcessorDesk.Paper.Tests.Rendering;

/// <summary>Runs the poppler tools: a renderer and reader that shares no code with the library that wrote the file.</summary>
internal static class Poppler
{
    public static void Run(string tool, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(tool, arguments) { RedirectStandardError = true })
            ?? throw new InvalidOperationException($"{tool} did not start.");
        var said = process.StandardError.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0 || said.Length > 0)
            throw new InvalidOperationException($"{tool} ended with {process.ExitCode}: {said}");
    }
}
