using System.Diagnostics;

namespace ProcessorDesk.Web.Tests.Harness;

/// <summary>The words of a PDF, read by poppler's pdftotext.</summary>
internal static class PdfText
{
    public static async Task<string> Of(Desk desk, string path)
    {
        var pdf = await desk.Client.GetByteArrayAsync(new Uri(path, UriKind.Relative));
        using var reader = Process.Start(new ProcessStartInfo("pdftotext", ["-layout", "-", "-"]) { RedirectStandardInput = true, RedirectStandardOutput = true })!;
        var text = reader.StandardOutput.ReadToEndAsync();
        await reader.StandardInput.BaseStream.WriteAsync(pdf);
        reader.StandardInput.Close();
        await reader.WaitForExitAsync();
        return reader.ExitCode == 0 ? await text : throw new InvalidOperationException($"{path} is no PDF that can be read.");
    }
}
