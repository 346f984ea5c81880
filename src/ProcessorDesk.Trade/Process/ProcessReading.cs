namespace ProcessorDesk.Trade.Process;

/// <summary>One reading of a probe in the meat.</summary>
/// <param name="At">When it was read, in UTC; all readings of a record are in the same zone.</param>
/// <param name="Probe">Which probe; any number that stays the same for it.</param>
/// <param name="Reading">As read; a reading in °C is turned down for cooking and up for cooling before it comes here.</param>
public readonly record struct ProcessReading(DateTime At, int Probe, Temperature Reading);
